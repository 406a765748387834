"""Where shipped files lie, in a checkout and in an installed package."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path, PurePosixPath

_PACKAGE = Path(__file__).resolve().parent.parent
PACKED = "_shipped"
"""The folder inside the installed package that holds `resources` and `sample_projects`."""
SAMPLE_SUFFIX = ".piece"


class NotShipped(LookupError):
    """A file that isn't shipped, or a name that leads out of the shipped folders."""


def resource_path(name: str) -> Path:
    """The path of a table, font or icon.

    Args:
        name: its path below `resources`, with forward slashes: "trade/species.toml".
    Raises:
        NotShipped: there is no such file.
    """
    return _file("resources", name)


def sample_path(name: str) -> Path:
    """The path of a sample piece file.

    Args:
        name: with or without its ending: "harbour-desk" or "harbour-desk.piece".
    Raises:
        NotShipped: there is no such sample.
    """
    return _file("sample_projects", name if name.endswith(SAMPLE_SUFFIX) else name + SAMPLE_SUFFIX)


def sample_names() -> tuple[str, ...]:
    """The names of all sample piece files, without their ending, in order.

    Raises:
        NotShipped: the folder of samples is missing.
    """
    return tuple(sorted(path.stem for path in _folder("sample_projects", _PACKAGE).glob("*" + SAMPLE_SUFFIX)))


def _file(folder: str, name: str) -> Path:
    parts = PurePosixPath(name).parts
    inside = bool(parts) and not PurePosixPath(name).is_absolute() and ".." not in parts and "\\" not in name
    path = _folder(folder, _PACKAGE).joinpath(*parts) if inside else None
    if path is None or not path.is_file():
        raise NotShipped(f'no file "{name}" is shipped in {folder}')
    return path


@lru_cache
def _folder(folder: str, package: Path) -> Path:
    """The packed folder, else the one at the top of the checkout.

    The packed one goes first: beside an installed package any other project may have left a folder of that name.
    """
    for path in (package / PACKED / folder, package.parent / folder):
        if path.is_dir():
            return path
    raise NotShipped(f"{folder} is missing beside the package in {package}; install shopdraw again")
