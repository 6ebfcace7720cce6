using System.CommandLine;

namespace FixScore.Cli.Commands.Completion;

/// <summary><c>completion SHELL</c>: a script that completes words of the command line.</summary>
static class CompletionCommand
{
    static readonly Argument<string> Shell = new("SHELL") { Description = "bash, zsh, fish or pwsh." };

    static CompletionCommand() => Shell.AcceptOnlyFromAmong("bash", "zsh", "fish", "pwsh");

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("completion", "Prints a script that completes commands and options in a shell.") { Shell };
        command.SetAction(parsed =>
        {
            session(parsed).Out.WriteLine(Script(parsed.GetValue(Shell)!));
            return ExitCode.Done;
        });
        return command;
    }

    // The program answers the directive [suggest:POSITION] with one word a line.
    static string Script(string shell) => shell switch
    {
        "bash" => """
            # bash: add to ~/.bashrc:  source <(fixscore completion bash)
            _fixscore() {
                local IFS=$'\n'
                COMPREPLY=($(compgen -W "$(fixscore "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
            }
            complete -o default -F _fixscore fixscore
            """,
        "zsh" => """
            # zsh: add to ~/.zshrc:  source <(fixscore completion zsh)
            _fixscore() {
                local -a words
                words=("${(@f)$(fixscore "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
                compadd -a words || _files
            }
            compdef _fixscore fixscore
            """,
        "fish" => """
            # fish: save as ~/.config/fish/completions/fixscore.fish
            complete -c fixscore -a '(fixscore "[suggest:"(commandline -C)"]" (commandline -cp) 2>/dev/null)'
            """,
        _ => """
            # PowerShell: add to $PROFILE:  fixscore completion pwsh | Out-String | Invoke-Expression
            Register-ArgumentCompleter -Native -CommandName fixscore -ScriptBlock {
                param($word, $line, $position)
                fixscore "[suggest:$position]" "$line" 2>$null | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
            }
            """,
    };
}
