#compdef guidebuilder
# Completes guidebuilder in zsh. Load it from ~/.zshrc, after compinit: source guidebuilder.zsh
_guidebuilder() {
  local -a words_there
  words_there=("${(@f)$("${words[1]}" "[suggest:$#BUFFER]" "$BUFFER" 2>/dev/null)}")
  compadd -a words_there
  _files
}
compdef _guidebuilder guidebuilder
