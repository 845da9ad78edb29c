# Completes guidebuilder in PowerShell. Load it from $PROFILE: . ./guidebuilder.ps1
Register-ArgumentCompleter -Native -CommandName guidebuilder -ScriptBlock {
    param($word, $line, $place)
    guidebuilder "[suggest:$place]" "$line" | ForEach-Object {
        [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
    }
}
