# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# The program that was typed answers; see src/cli/call/complete.h.

function __legwork_complete
    set -l words (commandline -opc)
    set -l part (commandline -ct)
    set -l program (string replace -r '^~/' "$HOME/" -- $words[1])
    set -l told ($program __complete fish $words[2..] "$part" 2>/dev/null)
    set -l before $told[2]
    set -l typed (string sub -s (math (string length -- "$before") + 1) -- "$part")
    string join \n -- $told[3..]
    set -l pattern
    switch "$told[1]"
        case jobs
            set pattern '^.*(?:/|\.toml)$'
        case any
            set pattern '^.*$'
        case folders
            set pattern '^.*/$'
        case '*'
            return
    end
    string replace -r '^' -- "$before" (complete -C "__fish_command_without_completions $typed" | string replace -r '\t.*' '' | string match -r -- $pattern)
end

complete -c legwork -f -a '(__legwork_complete)'
