"""A wheel built from the checkout runs outside it, with its tables and samples."""

import json
import os
import shutil
import subprocess
import sys
import sysconfig
from pathlib import Path

import pytest

CHECKOUT = Path(__file__).parents[2]
PACKED = ("shopdraw", "resources", "sample_projects", "pyproject.toml", "README.md", "LICENSE")
SAMPLES = "from shopdraw.shipped import sample_names, sample_path; print(*map(sample_path, sample_names()), sep='\\n')"


def run(*command: str | Path, cwd: Path) -> str:
    """Runs a command that must succeed, with nothing of the checkout on its path."""
    environment = {key: value for key, value in os.environ.items() if not key.startswith("PYTHON")}
    done = subprocess.run(command, cwd=cwd, env=environment, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr[-4000:]
    return done.stdout


@pytest.fixture(scope="module")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The programs folder of an environment that holds nothing but the wheel; libraries are lent from this one."""
    place = tmp_path_factory.mktemp("wheel")
    source = place / "source"
    for name in PACKED:
        if (CHECKOUT / name).is_dir():
            shutil.copytree(CHECKOUT / name, source / name, ignore=shutil.ignore_patterns("__pycache__"))
        else:
            shutil.copy2(CHECKOUT / name, source / name)
    run(sys.executable, "-m", "build", "--wheel", "--no-isolation", "--outdir", place, source, cwd=place)
    (wheel,) = place.glob("shopdraw-*.whl")
    shutil.rmtree(source)

    environment = place / "environment"
    run(sys.executable, "-m", "venv", "--without-pip", environment, cwd=place)
    programs = environment / "bin"
    run(
        sys.executable, "-m", "pip", "--python", programs / "python", "install", "-q", "--no-deps", "--no-index", wheel,
        cwd=place,
    )  # fmt: skip
    (packages,) = environment.glob("lib/python*/site-packages")
    lent = {sysconfig.get_path("purelib"), sysconfig.get_path("platlib")}
    (packages / "lent.pth").write_text("\n".join(sorted(lent)) + "\n")
    return programs


@pytest.fixture
def samples(installed: Path, tmp_path: Path) -> list[Path]:
    return [Path(line) for line in run(installed / "python", "-c", SAMPLES, cwd=tmp_path).splitlines()]


def test_it_is_the_installed_package_that_runs(installed: Path, tmp_path: Path) -> None:
    said = run(installed / "python", "-c", "import shopdraw; print(shopdraw.__file__)", cwd=tmp_path)
    assert Path(said.strip()).is_relative_to(installed.parent)


def test_help_names_every_verb(installed: Path, tmp_path: Path) -> None:
    said = run(installed / "shopdraw", "--help", cwd=tmp_path)
    assert all(verb in said for verb in ("edit", "start", "check", "facts", "export"))


def test_the_samples_are_inside(installed: Path, samples: list[Path]) -> None:
    here = {path.name for path in (CHECKOUT / "sample_projects").glob("*.piece")}
    assert {path.name for path in samples} == here
    assert all(path.is_relative_to(installed.parent) for path in samples)
    assert here


SPEAKS = """
import sys
from PySide6.QtCore import QCoreApplication
from shopdraw.editor.tongue import speak, translate
app = QCoreApplication([])
sys.stdout.buffer.write(f"{speak(app, ['de'])} {translate('Command', 'Hidden lines')}".encode())
"""


def test_the_translations_are_inside(installed: Path, tmp_path: Path) -> None:
    assert run(installed / "python", "-c", SPEAKS, cwd=tmp_path) == "de Verdeckte Kanten"


def test_facts_of_a_sample(installed: Path, samples: list[Path], tmp_path: Path) -> None:
    facts = json.loads(run(installed / "shopdraw", "facts", samples[0], cwd=tmp_path))
    assert facts["format"] == 1
    assert facts["boards"]


def test_a_sample_is_exported(installed: Path, samples: list[Path], tmp_path: Path) -> None:
    run(installed / "shopdraw", "export", samples[0], tmp_path / "out", cwd=tmp_path)
    manifest = json.loads((tmp_path / "out" / "manifest.json").read_text(encoding="utf-8"))
    folders = {file["path"].split("/")[0] for file in manifest["files"]}
    assert folders == {"sheets", "templates", "drawing", "cnc", "lists"}
    assert all((tmp_path / "out" / file["path"]).stat().st_size > 0 for file in manifest["files"])
