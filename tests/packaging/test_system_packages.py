"""What pip can't install is found missing, installed where the user may, else told exactly."""

import pytest

from tests import system_packages


@pytest.fixture(autouse=True)
def nobody_may_install(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(system_packages, "apt_command", lambda: None)


def test_this_machine_has_all_that_the_tests_need() -> None:
    assert system_packages.main(["--tests"]) == 0


def test_what_is_missing_is_told_with_the_command_to_type(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(system_packages, "LIBRARIES", {"libnothing.so.9": "libnothing9"})
    monkeypatch.setattr(system_packages, "PROGRAMS", {"nothing-a": "nothing-tools", "nothing-b": "nothing-tools"})
    assert system_packages.main(["--tests"]) == 1
    assert "apt-get install -y --no-install-recommends libnothing9 nothing-tools\n" in capsys.readouterr().err


def test_advice_stops_nobody(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setattr(system_packages, "LIBRARIES", {"libnothing.so.9": "libnothing9"})
    assert system_packages.main(["--advise"]) == 0
    assert "libnothing9" in capsys.readouterr().err


def test_an_install_that_fails_is_told_too(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(system_packages, "LIBRARIES", {"libnothing.so.9": "libnothing9"})
    monkeypatch.setattr(system_packages, "apt_command", lambda: ["false"])
    assert system_packages.main([]) == 1
    assert "libnothing9" in capsys.readouterr().err
