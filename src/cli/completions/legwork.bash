# bash completion for legwork                                                                   -*- shell-script -*-
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT

_legwork()
{
    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]} words=
    COMPREPLY=()
    if ((COMP_CWORD == 1)); then
        COMPREPLY=($(compgen -W 'new check balance print load forms explain --help --version' -- "$word"))
        return
    fi
    case $before in
        --format) COMPREPLY=($(compgen -W 'pdf svg png' -- "$word")); return ;;
        --sheet) COMPREPLY=($(compgen -W 'directory labels tape-notes load' -- "$word")); return ;;
        --form)
            words=$(legwork forms --json 2>/dev/null | sed -n 's/.*"form": "\([^"]*\)".*/\1/p')
            COMPREPLY=($(compgen -W "$words" -- "$word") $(compgen -f -X '!*.toml' -- "$word"))
            return ;;
        --by) COMPREPLY=($(compgen -W 'circuit theme' -- "$word")); return ;;
        --min) COMPREPLY=($(compgen -W 'error warning note' -- "$word")); return ;;
        --rule)
            words=$(legwork explain --json 2>/dev/null | sed -n 's/^      "rule": "\([^"]*\)".*/\1/p')
            COMPREPLY=($(compgen -W "$words" -- "$word"))
            return ;;
        --table)
            words=$(legwork explain --table --json 2>/dev/null | sed -n 's/.*"table": "\([^"]*\)".*/\1/p')
            COMPREPLY=($(compgen -W "$words" -- "$word"))
            return ;;
        --keys)
            words=$(legwork explain --keys --json 2>/dev/null | sed -n 's/.*"table": "\([^"]*\)".*/\1/p')
            COMPREPLY=($(compgen -W "$words" -- "$word"))
            return ;;
        --out) COMPREPLY=($(compgen -d -- "$word")); return ;;
        --method) COMPREPLY=($(compgen -W 'standard optional existing measured' -- "$word")); return ;;
        --moves | --seconds | --panel | --add) return ;;
    esac
    case $command in
        check) words='--by --rule --min --verdicts --measure --propose --write --json --help' ;;
        balance) words='--best --moves --seconds --write --json --help' ;;
        print) words='--out --sheet --form --format --json --help' ;;
        load) words='--method --panel --add --json --help' ;;
        forms) words='--json --help' ;;
        explain)
            words='--table --keys --schema --json --help'
            [[ $word == -* ]] || words=$(legwork explain --json 2>/dev/null | sed -n 's/.*"rule": "\([^"]*\)".*/\1/p') ;;
        *) words='--help' ;;
    esac
    if [[ $word == -* || $command == explain || $command == forms ]]; then
        COMPREPLY=($(compgen -W "$words" -- "$word"))
        return
    fi
    compopt -o filenames 2>/dev/null
    local IFS=$'\n'
    COMPREPLY=($(compgen -f -X '!*.toml' -- "$word") $(compgen -d -- "$word"))
}
complete -F _legwork legwork
