# Completes guidebuilder in fish. Put it into ~/.config/fish/completions.
function __guidebuilder
    set --local line (commandline --cut-at-cursor)
    guidebuilder "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
end
complete --command guidebuilder --arguments '(__guidebuilder)'
