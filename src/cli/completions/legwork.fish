# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT

set -l commands new check balance print load forms explain

complete -c legwork -f
complete -c legwork -n __fish_use_subcommand -l version -d 'the version'
complete -c legwork -s h -l help -d 'help'
complete -c legwork -n __fish_use_subcommand -a new -d 'a commented starter job'
complete -c legwork -n __fish_use_subcommand -a check -d 'every finding, worst first'
complete -c legwork -n __fish_use_subcommand -a balance -d 'spaces for all circuits, with the proof'
complete -c legwork -n __fish_use_subcommand -a print -d 'the sheets, PDF and SVG'
complete -c legwork -n __fish_use_subcommand -a load -d 'the load of a service or feeder, step by step'
complete -c legwork -n __fish_use_subcommand -a forms -d 'the forms there are, by sheet and size'
complete -c legwork -n __fish_use_subcommand -a explain -d 'what a rule asks, why, its usual remedy; or a table'

complete -c legwork -n '__fish_seen_subcommand_from new check balance print load' -F
complete -c legwork -n '__fish_seen_subcommand_from check balance print load forms explain' -l json -d 'results as JSON'
complete -c legwork -n '__fish_seen_subcommand_from check' -l by -x -a 'circuit theme' -d 'group the findings'
complete -c legwork -n '__fish_seen_subcommand_from check' -l min -x -a 'error warning note' -d 'only as grave or graver'
complete -c legwork -n '__fish_seen_subcommand_from check' -l verdicts -d 'what each rule came to'
complete -c legwork -n '__fish_seen_subcommand_from check' -l measure -d 'what to go and measure'
complete -c legwork -n '__fish_seen_subcommand_from check' -l propose -d 'breakers and cables for circuits that lack them'
complete -c legwork -n '__fish_seen_subcommand_from check' -l write -d 'with --propose: put them into the job file'
complete -c legwork -n '__fish_seen_subcommand_from check' -l rule -x -d 'only this rule' \
    -a '(legwork explain --json 2>/dev/null | string match -rg \'"rule": "([^"]*)"\')'
complete -c legwork -n '__fish_seen_subcommand_from explain' -l table -x -d 'a table of the code book' \
    -a '(legwork explain --table --json 2>/dev/null | string match -rg \'"table": "([^"]*)"\')'
complete -c legwork -n '__fish_seen_subcommand_from balance' -l best -d 'the least imbalance there is'
complete -c legwork -n '__fish_seen_subcommand_from balance' -l moves -x -d 'at most so many moves'
complete -c legwork -n '__fish_seen_subcommand_from balance' -l seconds -x -d 'stop searching after so many'
complete -c legwork -n '__fish_seen_subcommand_from balance' -l write -d 'put the spaces into the job file'
complete -c legwork -n '__fish_seen_subcommand_from load' -l method -x -a 'standard optional existing measured' -d 'how it is reckoned'
complete -c legwork -n '__fish_seen_subcommand_from load' -l panel -x -d 'the panel whose load is asked for'
complete -c legwork -n '__fish_seen_subcommand_from load' -l add -x -d 'can this be added: what it is, its breaker, its poles'
complete -c legwork -n '__fish_seen_subcommand_from print' -l out -r -a '(__fish_complete_directories)' -d 'folder to write to'
complete -c legwork -n '__fish_seen_subcommand_from print' -l sheet -x -a 'directory labels tape-notes load' -d 'only this sheet'
complete -c legwork -n '__fish_seen_subcommand_from print' -l format -x -a 'pdf svg png' -d 'file format'
complete -c legwork -n '__fish_seen_subcommand_from print' -l form -r -F -d 'form to print on' \
    -a '(legwork forms --json 2>/dev/null | string match -rg \'"form": "([^"]*)"\')'
complete -c legwork -n '__fish_seen_subcommand_from explain' -l keys -x -d 'the keys of a table of the job file' \
    -a '(legwork explain --keys --json 2>/dev/null | string match -rg \'"table": "([^"]*)"\')'
complete -c legwork -n '__fish_seen_subcommand_from explain' -l schema -d 'the schema of the job file, for editors'
complete -c legwork -n '__fish_seen_subcommand_from explain' -x \
    -a '(legwork explain --json 2>/dev/null | string match -rg \'"rule": "([^"]*)"\')'
