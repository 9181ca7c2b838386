# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""usage: completions_test.py PROGRAM

Types into bash, zsh and fish, as a person would, and looks at what a press of TAB makes of the line. A shell that is not
installed fails: tests/packages.sh names them."""

import json
import os
import pty
import select
import shlex
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

COMPLETIONS = Path(__file__).resolve().parents[2] / "src/cli/completions"
JOB = """
job   = { name = "Hut", code = "NEC 2023" }
panel = [
  { name = "Main panel", spaces = 8, supply = "120/240", main = "60 A" },
  { name = "Büro's \\"new\\" $1", spaces = 4, feeder = "Main panel/FP" },
]
circuit = [{ mark = "FP", name = "Feeder", panel = "Main panel", breaker = "30 A", poles = 2 }]
"""


def words_of(line):
    """The words of a line as a shell takes them."""
    ran = subprocess.run(["bash", "-c", f"printf '%s\\0' {line}"], capture_output=True, text=True, check=True)
    return ran.stdout.split("\0")[:-1]


class Shell:
    """A shell at a terminal that is asked through keys, and answers through a file: what stands on its line now."""

    def __init__(self, command, folder, environment, setup):
        self.answer = folder / ".answer"
        child, self.terminal = pty.fork()
        if child == 0:
            os.chdir(folder)
            os.execvpe(command[0], command, environment)
        self.child = child
        self.told = b""
        self.ask(setup + f" ; printf x > {shlex.quote(str(self.answer))}\n")

    def ask(self, keys):
        """What stands in the answer file when the keys have been taken."""
        self.answer.unlink(missing_ok=True)
        os.write(self.terminal, keys.encode())
        end = time.monotonic() + 60
        while not self.answer.exists():
            if select.select([self.terminal], [], [], 0.01)[0]:
                self.told += os.read(self.terminal, 65536)
            if time.monotonic() > end:
                raise TimeoutError(f"no answer to {keys!r}; the terminal shows {self.told[-2000:]!r}")
        return self.answer.read_text()

    def after_tab(self, line):
        return self.ask("\x15" + line + "\t" + "\x18p")

    def all_of(self, line):
        """The words that TAB offers."""
        done = self.ask("\x15" + line + "\x18a" + "\x18p")
        return set(words_of(done[line.rindex(" ") + 1 :])) if done != line else set()

    def close(self):
        os.write(self.terminal, b"\x15exit\n")
        try:
            while os.read(self.terminal, 65536):
                pass
        except OSError:
            pass
        os.waitpid(self.child, 0)


def bash(folder, environment):
    answer = shlex.quote(str(folder / ".answer"))
    return Shell(["bash", "--norc", "--noprofile", "-i"], folder, environment,
                 f". {COMPLETIONS}/legwork.bash; bind 'set enable-bracketed-paste off'; bind 'set completion-query-items 0'; "
                 "bind '\"\\C-xa\": insert-completions'; "
                 f"put() {{ printf %s \"$READLINE_LINE\" >{answer}.new; mv {answer}.new {answer}; }}; "
                 "bind -x '\"\\C-xp\": put'")


def zsh(folder, environment):
    answer = shlex.quote(str(folder / ".answer"))
    setup = f"""fpath=({COMPLETIONS} $fpath); unsetopt zle_bracketed_paste; autoload -U compinit; compinit -u -D
bindkey -e; bindkey '^I' complete-word; LISTMAX=1000000
put() {{ print -rn -- "$BUFFER" >{answer}.new; mv {answer}.new {answer} }}
zle -N put; bindkey '^Xp' put
zle -C all-matches complete-word _generic; bindkey '^Xa' all-matches
zstyle ':completion:all-matches:*' completer _all_matches _complete
zstyle ':completion:all-matches:*' insert yes"""
    (folder / ".setup").write_text(setup)
    return Shell(["zsh", "-f", "-i"], folder, environment, f". {folder}/.setup")


class Fish:
    """Fish lists what it would offer by itself, and puts in the quotes."""

    def __init__(self, folder, environment):
        self.folder, self.environment = folder, environment

    def all_of(self, line):
        ran = subprocess.run(["fish", "--no-config", "-c", f"source {COMPLETIONS}/legwork.fish; complete -C $argv", line],
                             cwd=self.folder, env=self.environment, capture_output=True, text=True, timeout=60)
        assert not ran.stderr, ran.stderr
        typed = line[line.rindex(" ") + 1 :]  # it would also take letters in the midst of a word
        return {row.split("\t")[0] for row in ran.stdout.splitlines() if row.startswith(typed)}

    def after_tab(self, line):
        words = self.all_of(line)
        return line[: line.rindex(" ") + 1] + words.pop() + " " if len(words) == 1 else line

    def close(self):
        pass


class Judge:
    def __init__(self, name, shell):
        self.name, self.shell, self.faults = name, shell, 0

    def expect(self, line, got, wanted):
        if got != wanted:
            self.faults += 1
            print(f"{self.name}: {line!r}: {got!r}, not {wanted!r}")

    def all(self, line, *wanted):
        before = line[line.rindex(" ") + 1 :].partition("=")
        before = before[0] + "=" if before[1] else ""
        got = self.shell.all_of(line)
        # Bash and zsh write the option once, and the others behind it; fish ends the name of a folder with a slash.
        self.expect(line, {word.removeprefix(before).rstrip("/") for word in got}, set(wanted))

    def one(self, line, wanted):
        self.expect(line, self.shell.after_tab(line), wanted)


def program_words(program, *call):
    """First words of what a command lists, from its JSON."""
    return json.loads(subprocess.run([program, *call, "--json"], capture_output=True, check=True).stdout)


def judge(name, shell, program):
    j = Judge(name, shell)
    forms = [f["name"] if "name" in f else f["form"] for f in program_words(program, "forms")["forms"]]
    rules = program_words(program, "explain")["rules"]
    tables = [t["table"] for t in program_words(program, "explain", "--table")["tables"]]
    checked, all_rules = [r["rule"] for r in rules if r["checked"]], [r["rule"] for r in rules]
    assert len(checked) < len(all_rules)
    labels = [f for f in forms if f.startswith("lab")]
    call = "./bin/legwork"

    j.one(f"{call} che", f"{call} check ")
    j.one(f"{call} help bal", f"{call} help balance ")
    j.all(f"{call} check --by=", "circuit", "theme")
    j.all(f"{call} check --by ", "circuit", "theme")
    j.one(f"{call} check --by=ci", f"{call} check --by=circuit ")
    j.one(f"{call} check --by th", f"{call} check --by theme ")
    j.all(f"{call} print job.toml --form=lab", *labels)
    j.all(f"{call} print job.toml --form lab", *labels)
    j.all(f"{call} check --rule ", *checked)
    j.all(f"{call} explain ", *all_rules)
    j.all(f"{call} explain --table ", *tables)
    j.all(f"{call} print job.toml --out ", "bin", "sheets here", "poison")
    j.all(f"{call} print job.toml --out=", "bin", "sheets here", "poison")
    j.all(f"{call} check ", "job.toml", "a job's.toml", "bin", "sheets here", "poison")
    j.all(f"{call} load job.toml --panel ", "Main panel", "Büro's \"new\" $1")
    j.all(f"{call} load \"a job's.toml\" --panel ", "Shed")
    j.all(f"{call} load --panel ")  # no job on the line
    for nothing in "missing.toml", "broken.txt", "-", "pipe", "/dev/zero":
        j.all(f"{call} load {nothing} --panel ")
    # An option that was typed, or that does not go with one that was, is offered no more.
    j.all(f"{call} check job.toml --m", "--min", "--measure")
    j.all(f"{call} check job.toml --min=note --m")
    j.all(f"{call} no-such-command --")
    # The program in PATH prints rubbish: it is asked only where it was typed.
    j.one("legwork che", "legwork check-of-the-one-in-path ")
    if name != "fish":  # which puts in the quotes itself, and shows words without
        j.one(f"{call} load job.toml --panel M", f"{call} load job.toml --panel Main\\ panel ")
        j.one(f"{call} load job.toml --panel=M", f"{call} load job.toml --panel=Main\\ panel ")
        j.one(f"{call} load job.toml --panel \"M", f"{call} load job.toml --panel \"Main panel\" ")
        for typed in "B", "Bü", "Büro\\'s", "\"Büro's", "'B":
            for between in " ", "=":
                line = f"{call} load job.toml --panel{between}{typed}"
                done = shell.after_tab(line)
                word = words_of(done)[-1].removeprefix("--panel=")
                j.expect(line, word, "Büro's \"new\" $1")
    return j.faults


def folder_of_jobs(folder, program):
    for name in "bin", "sheets here", "poison":
        (folder / name).mkdir()
    (folder / "bin/legwork").symlink_to(program)
    poison = folder / "poison/legwork"
    poison.write_text("#!/bin/sh\nprintf 'none\\n\\ncheck-of-the-one-in-path\\n'\n")
    poison.chmod(0o755)
    (folder / "job.toml").write_text(JOB)
    (folder / "a job's.toml").write_text(JOB.replace("Main panel", "Shed").replace(
        '  { name = "Büro\'s \\"new\\" $1", spaces = 4, feeder = "Shed/FP" },\n', ""))
    (folder / "broken.txt").write_text("panel = [{")
    os.mkfifo(folder / "pipe")


def main():
    program, faults = Path(sys.argv[1]).resolve(), 0
    for name, make in {"bash": bash, "zsh": zsh, "fish": Fish}.items():
        if not shutil.which(name):
            print(f"{name} is not installed")
            faults += 1
            continue
        with tempfile.TemporaryDirectory() as scratch:
            folder = Path(scratch)
            folder_of_jobs(folder, program)
            environment = {"HOME": scratch, "PATH": f"{folder}/poison:{os.environ['PATH']}", "TERM": "dumb",
                           "LC_ALL": "C.UTF-8", "XDG_CONFIG_HOME": f"{folder}/.config", "XDG_DATA_HOME": f"{folder}/.data",
                           **{k: v for k, v in os.environ.items() if k.startswith(("ASAN", "UBSAN"))}}
            shell = make(folder, environment)
            faults += judge(name, shell, program)
            shell.close()
    sys.exit(faults > 0)


main()
