using System.CommandLine;

namespace Washline.App.Commands;

/// <summary><c>washline completion SHELL</c>: a script that lets a shell complete what is being typed.</summary>
public static class CompletionCommand
{
    private static readonly Dictionary<string, string> Scripts = new()
    {
        ["bash"] = """
            _washline() {
              local IFS=$'\n'
              COMPREPLY=($(washline "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null))
            }
            complete -o default -F _washline washline
            """,
        ["zsh"] = """
            _washline() {
              compadd -- ${(f)"$(washline "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)"}
            }
            compdef _washline washline
            """,
        ["fish"] = """
            complete -c washline -a '(washline "[suggest:"(commandline -C)"]" (commandline) 2>/dev/null)'
            """,
        ["pwsh"] = """
            Register-ArgumentCompleter -Native -CommandName washline -ScriptBlock {
              param($word, $line, $at)
              washline "[suggest:$at]" "$line" | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
            }
            """,
    };

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var shell = new Argument<string>("SHELL") { Description = "The shell you type in: bash, zsh, fish or pwsh.", HelpName = "SHELL" };
        shell.AcceptOnlyFromAmong([.. Scripts.Keys]);
        var command = new Verb("completion", "Prints a script that lets your shell complete what you type.", "source <(washline completion bash)") { shell };
        command.SetAction(result => result.Output().WriteLine(Scripts[result.GetRequiredValue(shell)]));
        return command;
    }
}
