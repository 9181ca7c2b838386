#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# usage: install_test.sh BUILD_FOLDER JOB
# Installs into a staging folder and tries what was installed from there, forms and fonts included.
set -eu
build=$1
job=$2
stage=$(mktemp -d)
trap 'rm -rf "$stage"' EXIT
DESTDIR="$stage/a b" cmake --install "$build" >/dev/null
cd "$stage"

program=$(find "$stage" -type f -path '*/bin/legwork')
share=$(find "$stage" -type d -path '*/share/legwork')
[ -x "$program" ]
for file in templates/starter.toml fonts/OFL.txt legwork-job.schema.json; do [ -f "$share/$file" ]; done
for file in man/man1/legwork.1 man/man5/legwork-job.5 bash-completion/completions/legwork zsh/site-functions/_legwork fish/vendor_completions.d/legwork.fish; do
    [ -f "$(dirname "$share")/$file" ] || { echo "not installed: $file"; exit 1; }
done

# A form put only there is found: so the forms beside the program are the ones in use.
sed 's/^title.*/title = "staged"/' "$share/templates/directory-a4.toml" >"$share/templates/directory-staged.toml"
"$program" forms | grep -q '^directory *directory-staged *staged'
"$program" new hut.toml
"$program" check hut.toml >/dev/null
schema=$(sed -n '1s|^#:schema file://||p' hut.toml | sed 's/%20/ /g')
cmp -s "$schema" "$share/legwork-job.schema.json" || { echo "an editor finds no schema: $(head -n 1 hut.toml)"; exit 1; }
"$program" explain --schema | cmp -s - "$schema"
"$program" print "$job" --out sheets >/dev/null
[ -s sheets/labels.pdf ]

# Where the shares are missing it says so, names the places, and writes nothing.
mv "$share" "$share.away"
status=0
"$program" print "$job" --out elsewhere 2>told || status=$?
if [ "$status" -ne 0 ]; then # else another legwork is installed on this machine, and its forms were found
    [ "$status" -eq 3 ]
    grep -q 'was not found' told
    grep -qF "$share" told
    [ ! -e elsewhere ]
fi

if command -v bash >/dev/null 2>&1; then bash -n "$(dirname "$share")/bash-completion/completions/legwork"; fi
for shell in zsh fish; do
    command -v $shell >/dev/null 2>&1 || continue
    find "$stage" -name '*legwork*' -path "*$shell*" -type f -exec $shell -n {} \;
done
if command -v man >/dev/null 2>&1; then
    for page in man1/legwork.1 man5/legwork-job.5; do
        warnings=$(MANWIDTH=80 man --warnings -l "$(dirname "$share")/man/$page" 2>&1 >/dev/null)
        [ -z "$warnings" ] || { echo "$warnings"; exit 1; }
    done
fi
