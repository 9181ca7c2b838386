# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
#
# Releases of Debian and Ubuntu in folders, for what has to be tried away from this machine's own packages. Sourced from the top of the
# sources by other-debian.sh and package.sh, after packages.sh; POSIX sh.

# release_folder GIVEN NAME: where NAME is kept: in the folder that is given, else in the cache folder of whoever calls. Not in the
# sources.
release_folder() {
    folder=$(realpath -m "${1:-${XDG_CACHE_HOME:-$HOME/.cache}/legwork}/$2")
    case $folder in
    "$PWD"/*) echo "legwork: $folder lies in the sources: name a folder outside of them" >&2; return 1 ;;
    esac
    echo "$folder"
}

# make_release RELEASE FOLDER: its smallest system, made once by debootstrap. $MIRROR is where packages come from, if not the usual place.
make_release() {
    [ "$(id -u)" -eq 0 ] || { echo "legwork: another release is entered by chroot, which needs root: run this as root" >&2; return 1; }
    [ ! -e "$2/legwork/made" ] || return 0
    need debootstrap
    script=$(readlink -f "/usr/share/debootstrap/scripts/$1") && [ -e "$script" ] ||
        { echo "legwork: debootstrap knows no release \"$1\"" >&2; return 1; }
    parts=main
    [ "$(basename "$script")" != gutsy ] || parts=main,universe # Ubuntu keeps there what it does not keep in main
    mkdir -p "$2"
    # shellcheck disable=SC2086 # no mirror is none
    debootstrap --variant=minbase --components="$parts" "$1" "$2" ${MIRROR:-}
    mkdir -p "$2/legwork"
    touch "$2/legwork/made"
}

# in_release FOLDER COMMANDS: run by its sh in its folder /legwork, with nothing of this machine's surroundings.
in_release() {
    chroot "$1" env -i PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 \
        DEBIAN_FRONTEND=noninteractive sh -euc "cd /legwork
$2"
}
