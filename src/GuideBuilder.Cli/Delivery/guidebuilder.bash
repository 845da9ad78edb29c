# Completes guidebuilder in bash. Load it from ~/.bashrc: source guidebuilder.bash
_guidebuilder() {
  local IFS=$'\n' word=${COMP_WORDS[COMP_CWORD]}
  mapfile -t COMPREPLY < <(compgen -W "$("${COMP_WORDS[0]}" "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null)" -- "$word")
}
complete -o default -F _guidebuilder guidebuilder
