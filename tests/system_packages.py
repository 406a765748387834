"""Looks for what pip can't install: the system libraries that Qt loads, and poppler's programs for the tests.

    python3 system_packages.py [--advise] [--tests]

Missing ones are installed through apt-get when the user may do that; else the exact command to type is printed.
Exit 0: all there (or --advise: told, but carry on); 1: something is missing. Uses the standard library alone, since it
runs before anything is installed.
"""

from __future__ import annotations

import ctypes
import os
import shutil
import subprocess
import sys

# Debian 12's package for each shared library that Qt's offscreen platform loads (found with a bare Debian 12).
LIBRARIES = {
    "libglib-2.0.so.0": "libglib2.0-0",
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
}
PROGRAMS = {"pdftotext": "poppler-utils", "pdftoppm": "poppler-utils", "pdfinfo": "poppler-utils"}


def loads(library: str) -> bool:
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def missing(with_tests: bool) -> dict[str, str]:
    """What isn't there, and the Debian package of each."""
    absent = {library: package for library, package in LIBRARIES.items() if not loads(library)}
    if with_tests:
        absent |= {program: package for program, package in PROGRAMS.items() if shutil.which(program) is None}
    return absent


def packages_of(absent: dict[str, str]) -> list[str]:
    """The packages, each once."""
    return list(dict.fromkeys(absent.values()))


def apt_command() -> list[str] | None:
    """How this user may call apt-get without being asked anything, or None."""
    if shutil.which("apt-get") is None:
        return None
    if os.geteuid() == 0:
        return ["apt-get"]
    if shutil.which("sudo") is None:
        return None
    allowed = subprocess.run(["sudo", "-n", "true"], capture_output=True, check=False).returncode == 0
    return ["sudo", "-n", "apt-get"] if allowed else None


def install(apt: list[str], packages: list[str]) -> bool:
    environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    command = [*apt, "install", "-y", "--no-install-recommends", *packages]
    # The first try spares the update; a fresh machine has no package lists yet and needs it.
    for step in (command, [*apt, "update"], command):
        result = subprocess.run(step, env=environment, capture_output=True, text=True, check=False)
        if step is command and result.returncode == 0:
            return True
    sys.stderr.write(result.stderr)
    return False


def main(arguments: list[str]) -> int:
    if not sys.platform.startswith("linux"):
        return 0
    with_tests = "--tests" in arguments
    absent = missing(with_tests)
    apt = apt_command() if absent else None
    if apt:
        print(f"Installing system packages: {' '.join(packages_of(absent))}", flush=True)
        install(apt, packages_of(absent))
        absent = missing(with_tests)
    if not absent:
        return 0
    names = " ".join(packages_of(absent))
    sys.stderr.write(
        f"System packages are missing: {names}. On Debian 12 they are installed with:\n"
        f"    sudo apt-get update && sudo apt-get install -y --no-install-recommends {names}\n"
        f"On another system install what provides {', '.join(absent)}.\n"
    )
    return 0 if "--advise" in arguments else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
