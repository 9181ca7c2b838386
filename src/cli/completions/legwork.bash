# bash completion for legwork                                                                   -*- shell-script -*-
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# The program that was typed answers; see src/cli/call/complete.h.

_legwork()
{
    local program=${1//[\\\"\']/} told=
    mapfile -t told < <("${program/#\~\//$HOME/}" __complete bash "$COMP_WORDBREAKS" "${COMP_LINE:0:COMP_POINT}" 2>/dev/null)
    local files=${told[0]} typed=${told[1]}
    COMPREPLY=("${told[@]:2}")
    [[ ${files:-none} != none ]] || return 0
    compopt -o filenames 2>/dev/null
    case $files in
        jobs) mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -f -X '!*.toml' -- "$typed"; compgen -d -- "$typed") ;;
        any) mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -f -- "$typed") ;;
        folders) mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -d -- "$typed") ;;
    esac
}
complete -F _legwork legwork
