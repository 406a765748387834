"""``shopdraw freeze``: written into the piece file beside what stands there, and read back."""

import shutil

from shopdraw.cli import main
from shopdraw.piece.reading import read_piece
from tests.sheet.sample_set import SAMPLES


def a_piece(tmp_path):
    return shutil.copy(SAMPLES / "chart-room-desk.piece", tmp_path / "desk.piece")


def test_a_revision_is_kept_and_a_later_change_is_told(tmp_path, capsys):
    piece = a_piece(tmp_path)
    before = piece.read_text(encoding="utf-8")
    assert main(["freeze", str(piece), "A", "--cut", "3", "--date", "2026-05-01"]) == 0
    after = piece.read_text(encoding="utf-8")
    assert after.startswith(before.rstrip())
    table = read_piece(piece).design.revision["A"]
    assert (table.date, table.cut) == ("2026-05-01", ("3",))
    assert main(["check", str(piece)]) == 0
    width = read_piece(piece).design.case.width
    changed = after.replace("[case]", "[case]\n# a little wider")
    assert changed != after
    lines = [
        f"width = {width + 10}" if line.replace(" ", "").startswith("width=") else line for line in changed.split("\n")
    ]
    piece.write_text("\n".join(lines), encoding="utf-8")
    capsys.readouterr()
    assert main(["check", str(piece)]) == 1
    assert "cut-board-wrong" in capsys.readouterr().out


def test_a_revision_is_never_written_over(tmp_path, capsys):
    piece = a_piece(tmp_path)
    assert main(["freeze", str(piece), "A"]) == 0
    frozen = piece.read_text(encoding="utf-8")
    assert main(["freeze", str(piece), "A"]) == 2
    assert "already" in capsys.readouterr().err
    assert piece.read_text(encoding="utf-8") == frozen


def test_a_board_that_is_not_there_is_refused(tmp_path, capsys):
    piece = a_piece(tmp_path)
    before = piece.read_text(encoding="utf-8")
    assert main(["freeze", str(piece), "A", "--cut", "77"]) == 2
    assert '"77"' in capsys.readouterr().err
    assert piece.read_text(encoding="utf-8") == before


def test_a_name_is_letters_and_figures(tmp_path, capsys):
    assert main(["freeze", str(a_piece(tmp_path)), "A/B"]) == 2
    assert "letters and figures" in capsys.readouterr().err
