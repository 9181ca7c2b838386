#!/bin/sh
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Makes Debian's package in build-package and looks at it; then installs it into a fresh system of this machine's release, which has
# neither sources nor compiler, tries it there and takes it away:
#     sh tests/package.sh [FOLDER]
# The system is put into FOLDER once and used again: release.sh; that part needs root.
set -eu
cd "$(dirname "$0")/.."
. tests/packages.sh
. tests/release.sh
need $BUILD_PACKAGES $PACKAGE_PACKAGES
fail() { echo "legwork: the package: $*" >&2; exit 1; }

cmake -S . -B build-package -G Ninja -DCMAKE_BUILD_TYPE=Release -DLEGWORK_TESTS=OFF -DLEGWORK_PACKAGE=ON
rm -f build-package/*.deb
cmake --build build-package -j "$(nproc)" --target package
set -- "${1:-}" build-package/*.deb
[ $# -eq 2 ] || fail "there is not one file, but: $*"
package=$2

# Nothing in it says where it was built.
content=build-package/content
rm -rf "$content"
dpkg-deb -x "$package" "$content"
(cd "$content" && find . -type f -exec strings -f {} + && find . -name '*.gz' -exec zcat {} +) | grep -F -e "$PWD" -e build-package &&
    fail "it has words of where it was built"

# As Debian hardens programs: its own eye for that is hardening-check, which asks the same.
program=$content/usr/bin/legwork
readelf -h "$program" | grep -q 'Type: *DYN' || fail "the program is not position independent"
readelf -lW "$program" | grep -q GNU_RELRO || fail "no relro"
readelf -dW "$program" | grep -q BIND_NOW || fail "not bound at once"
nm -D "$program" | grep -q __stack_chk_fail || fail "the stack is not guarded"
nm -D "$program" | grep -q '_chk@' || fail "nothing is fortified"

dpkg-deb -f "$package" Depends | grep -q libcairo2 || fail "it does not depend on what it needs"
lintian --fail-on error "$package" || fail "lintian finds errors"

codename=$(. /etc/os-release && echo "$VERSION_CODENAME")
root=$(release_folder "$1" "$codename-clean")
make_release "$codename" "$root"
trap 'rm -f "$root/legwork/legwork.deb"' EXIT
cp "$package" "$root/legwork/legwork.deb"
cp examples/boathouse.toml "$root/legwork/"
in_release "$root" '
    apt-get -q update
    apt-get -q install -y --no-install-recommends ./legwork.deb
    for file in man/man1/legwork.1.gz bash-completion/completions/legwork zsh/vendor-completions/_legwork \
        fish/vendor_completions.d/legwork.fish doc/legwork/copyright doc/legwork/changelog.gz; do
        [ -f "/usr/share/$file" ] || { echo "not installed: $file"; exit 1; }
    done
    rm -rf tried
    mkdir tried
    cd tried
    legwork --version
    legwork new hut.toml
    legwork check hut.toml
    legwork check ../boathouse.toml
    legwork print ../boathouse.toml --out sheets
    [ -s sheets/labels.pdf ]
    apt-get -q purge -y legwork
    [ ! -e /usr/bin/legwork ] && [ ! -e /usr/share/legwork ] && [ ! -e /usr/share/doc/legwork ]
    ! find / -xdev -not -path "/proc/*" -not -path "/legwork*" -not -path "/var/*" -iname "*legwork*" | grep .
'
echo "legwork: $package was made, installed, tried and taken away again"
