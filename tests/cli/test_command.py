"""The command line: its words, its exit codes, and errors in one line."""

import subprocess
import sys
from pathlib import Path

import pytest

from shopdraw import __version__
from shopdraw.cli import command, main

SLOW = ("numpy", "shapely", "pydantic", "ezdxf", "PySide6", "reportlab", "manifold3d", "openpyxl", "tomlkit")


def refusal(capsys: pytest.CaptureFixture[str], *words: str) -> str:
    """The one line on stderr of a command that is refused."""
    assert main(words) == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.count("\n") == 1
    assert "Traceback" not in said.err
    return said.err


def test_help_imports_nothing_that_is_slow() -> None:
    done = subprocess.run(
        [sys.executable, "-X", "importtime", "-m", "shopdraw", "--help"], capture_output=True, text=True, check=True
    )
    imported = {line.rpartition("|")[2].strip().partition(".")[0] for line in done.stderr.splitlines() if "|" in line}
    assert "argparse" in imported
    assert imported.isdisjoint(SLOW)


def test_help_names_every_verb(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--help"]) == 0
    said = capsys.readouterr().out
    assert all(f"    {verb} " in said for verb in ("edit", "start", "check", "facts", "export"))


def test_the_version_is_the_packages(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--version"]) == 0
    assert capsys.readouterr().out.strip() == f"shopdraw {__version__}"


@pytest.mark.parametrize(
    "words",
    [("fly",), ("check",), ("export", "a.piece"), ("export", "a.piece", "out", "--only", "cake"), ("facts", "a", "b"),
     ("start", "boat", "a.piece"), ("check", "a.piece", "--loud")],
)  # fmt: skip
def test_words_that_mean_nothing_give_one_line(capsys: pytest.CaptureFixture[str], words: tuple[str, ...]) -> None:
    assert "--help" in refusal(capsys, *words)


def test_an_error_of_the_program_itself_is_one_line(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(_words: object) -> int:
        raise ZeroDivisionError("one\ntwo")

    monkeypatch.setitem(command._VERBS, "facts", fail)
    said = refusal(capsys, "facts", "a.piece")
    assert "ZeroDivisionError" in said
    assert "please report" in said


def test_a_reader_that_has_enough_is_no_error(tmp_path: Path) -> None:
    program = "import sys, shopdraw.cli.command as c; c._VERBS['facts'] = lambda w: print('x' * 10**6) or 0; "
    program += "sys.exit(c.main(['facts', 'a']))"
    with subprocess.Popen([sys.executable, "-c", program], stdout=subprocess.PIPE, stderr=subprocess.PIPE) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.read(10)
        process.stdout.close()
        assert process.stderr.read() == b""
    assert process.returncode == 0
