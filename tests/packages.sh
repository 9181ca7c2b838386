# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# What legwork is built and tested with, by Debian's names, which are the same in Debian 12 and 13 and in Ubuntu 24.04. Sourced by the
# scripts of tests/ and examples/; POSIX sh.

BUILD_PACKAGES="g++ cmake ninja-build pkg-config libcairo2-dev libpango1.0-dev libfontconfig-dev zlib1g-dev libfmt-dev
    nlohmann-json3-dev libtoml11-dev libcli11-dev"
# Judges from outside: a PDF reader, an SVG renderer, an XML parser, a JSON Schema validator, MIP solvers, the shells
# that complete.
TEST_PACKAGES="catch2 librapidcheck-dev python3 python3-jsonschema poppler-utils qpdf librsvg2-bin libxml2-utils glpk-utils coinor-cbc
    locales gettext bash zsh fish"
# A compiler with libFuzzer, what names the functions in its reports, and a linker that is quick about its programs.
FUZZ_PACKAGES="clang libclang-rt-dev llvm lld"
FORMAT_PACKAGES="clang-format"
TIDY_PACKAGES="clang clang-tidy"
PACKAGE_PACKAGES="dpkg-dev lintian binutils"

as_root() {
    if [ "$(id -u)" -eq 0 ]; then
        "$@"
    elif command -v sudo >/dev/null 2>&1; then
        sudo "$@"
    else
        echo "legwork: $* needs root; install as root: $missing" >&2
        return 1
    fi
}

missing_packages() {
    for package in "$@"; do
        dpkg-query -W -f='${Status}\n' "$package" 2>/dev/null | grep -q 'ok installed' || printf '%s ' "$package"
    done
}

# need PACKAGE...: installs what is missing where there is apt-get; elsewhere says what to install and goes on if the
# tools seem to be there.
need() {
    if command -v apt-get >/dev/null 2>&1 && command -v dpkg-query >/dev/null 2>&1; then
        missing=$(missing_packages "$@")
        [ -n "$missing" ] || return 0
        echo "legwork: installing $missing"
        as_root apt-get -q update &&
            # shellcheck disable=SC2086 # a list of words
            as_root env DEBIAN_FRONTEND=noninteractive apt-get -q install -y --no-install-recommends $missing
        return
    fi
    echo "legwork: this is no Debian; these are needed, here by Debian's names:" >&2
    printf '  %s\n' "$@" >&2
    for tool in c++ cmake ninja pkg-config; do
        command -v "$tool" >/dev/null 2>&1 || { echo "legwork: there is no $tool; install it and run this again" >&2; return 1; }
    done
    echo "legwork: going on with what is installed" >&2
}
