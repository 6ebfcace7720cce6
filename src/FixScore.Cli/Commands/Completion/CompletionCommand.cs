namespace FixScore.Cli.Commands.Completion;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>completion SHELL</c>: a script that completes words of the command line.</summary>
sealed class CompletionCommand : AppCommand
{
    readonly Argument<string> shell = new("SHELL") { Description = "bash, zsh, fish or pwsh." };

    public CompletionCommand() : base("completion", "Prints a script that completes commands and options in a shell.", "completion bash > fixscore.bash")
    {
        shell.AcceptOnlyFromAmong("bash", "zsh", "fish", "pwsh");
        Add(shell);
    }

    public override int Run(CommandSession session)
    {
        session.Out.WriteLine(Script(session.Parsed.GetValue(shell)!).ReplaceLineEndings("\n"));
        return ExitCode.Done;
    }

    // The program answers the directive [suggest:POSITION] with one word a line.
    static string Script(string shell) => shell switch
    {
        "bash" => """
            # bash: add to ~/.bashrc:  source <(fixscore completion bash)
            _fixscore() {
                local IFS=$'\n' word="${COMP_WORDS[COMP_CWORD]}" words
                words="$(fixscore "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)"
                # Options only where one was begun: else files would never be offered.
                [[ "$word" == -* ]] || words="$(grep -v '^[-/]' <<< "$words")"
                COMPREPLY=($(compgen -W "$words" -- "$word"))
            }
            complete -o default -F _fixscore fixscore
            """,
        "zsh" => """
            # zsh: add to ~/.zshrc:  source <(fixscore completion zsh)
            _fixscore() {
                local -a found
                found=("${(@f)$(fixscore "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
                # Options only where one was begun: else files would never be offered.
                [[ "${words[CURRENT]}" == -* ]] || found=("${(@)found:#[-/]*}")
                compadd -- "${(@)found:#}" || _files
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
