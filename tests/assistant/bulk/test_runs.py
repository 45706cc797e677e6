"""A run is stopped, killed and fed what no recipe should be: nothing is lost, and what is done stays done."""

from __future__ import annotations

import os
import signal
import time
from collections.abc import Callable
from pathlib import Path
from subprocess import Popen

import pytest

from tests.assistant.bulk.conftest import MANY_KITCHENS as KITCHENS
from tests.assistant.bulk.conftest import Ground

LONGEST_S = 120.0


def begun(ground: Ground, running: Popen[str]) -> None:
    """Wait until a part is being written."""
    waited_from = time.monotonic()
    while not list(ground.out.glob("conversions/.part-*")):
        assert running.poll() is None, running.communicate()
        assert time.monotonic() - waited_from < LONGEST_S
        time.sleep(0.02)


def children(pid: int) -> list[int]:
    """The processes that a process has started."""
    tasks = Path(f"/proc/{pid}/task").glob("*/children")
    return [int(child) for task in tasks for child in task.read_text().split()]


needs_proc = pytest.mark.skipif(not Path("/proc/self/task").is_dir(), reason="tells of processes by /proc")


def test_a_run_that_is_done_is_not_done_again(ground: Ground) -> None:
    ground.rolls("plain", "milk")
    assert ground.run()[0] == 0
    before = ground.files()
    code, told, _ = ground.run()
    assert code == 0
    assert "6 pairs of 2 recipes and 3 kitchens" in told
    assert ground.files() == before


@pytest.mark.parametrize("changed", ["recipe", "kitchen", "option"])
def test_what_has_changed_is_done_anew(ground: Ground, changed: str) -> None:
    ground.rolls("plain")
    assert ground.run()[0] == 0
    before = ground.rows()
    options: tuple[str, ...] = ()
    if changed == "recipe":
        recipe = ground.recipes / "plain.txt"
        recipe.write_text(recipe.read_text().replace("9 g salt", "11 g salt"))
    elif changed == "kitchen":
        table = ground.folder / "kitchens.csv"
        table.write_text(table.read_text().replace("7000 ft", "8000 ft"))
    else:
        options = ("--from", "5300 ft")
    assert ground.run(*options)[0] == 0
    after = ground.rows()
    assert len(after) == len(before)
    assert after != before


def test_a_recipe_that_is_added_leaves_the_parts_of_others(ground: Ground) -> None:
    ground.many_kitchens()
    ground.rolls("a", "b", "c", "d", "e")
    assert ground.run()[0] == 0
    before = ground.files()
    ground.rolls("f")
    assert ground.run()[0] == 0
    stayed = [name for name, held in ground.files().items() if before.get(name) == held]
    assert len(before) > 1
    assert len(stayed) >= len(before) - 1
    assert ground.count() == {f"{name}.txt": KITCHENS for name in "abcdef"}


def test_a_line_of_the_manifest_that_was_torn_is_done_anew(ground: Ground) -> None:
    ground.rolls("plain")
    assert ground.run()[0] == 0
    before = ground.rows()
    manifest = ground.out / "manifest.jsonl"
    manifest.write_text(manifest.read_text()[:-20])
    assert ground.run()[0] == 0
    assert ground.rows() == before


@needs_proc
def test_a_worker_that_is_killed_loses_nothing(ground: Ground, elsewhere: Callable[[Ground], Ground]) -> None:
    ground.rolls("plain", "milk")
    ground.rolls("slow", says="mischief: slow")
    undisturbed = elsewhere(ground)
    assert undisturbed.run()[0] == 0
    running = ground.start("--workers", "1")
    begun(ground, running)
    (worker,) = children(running.pid)
    os.kill(worker, signal.SIGKILL)
    _, aside = running.communicate(timeout=LONGEST_S)
    assert running.returncode == 0, aside
    assert ground.rows() == undisturbed.rows()
    assert ground.errors() == []
    assert not list(ground.out.glob("conversions/.*"))


def test_a_run_that_is_killed_goes_on(ground: Ground, elsewhere: Callable[[Ground], Ground]) -> None:
    ground.rolls("plain")
    ground.rolls("slow", says="mischief: slow")
    undisturbed = elsewhere(ground)
    assert undisturbed.run()[0] == 0
    running = ground.start()
    begun(ground, running)
    running.kill()
    running.communicate(timeout=LONGEST_S)
    assert ground.run()[0] == 0
    assert ground.rows() == undisturbed.rows()
    assert not list(ground.out.glob("conversions/.*"))


def test_a_run_that_is_asked_to_stop_finishes_what_it_began_and_goes_on_later(ground: Ground) -> None:
    ground.many_kitchens()
    ground.rolls("a", "b", "c", "d", says="mischief: slow")
    running = ground.start("--workers", "1")
    begun(ground, running)
    running.send_signal(signal.SIGINT)
    told, aside = running.communicate(timeout=LONGEST_S)
    assert running.returncode == 1
    assert "go on" in told
    assert "Traceback" not in aside
    kept = ground.files()
    assert len(kept) == 1
    assert ground.run()[0] == 0
    assert ground.count() == {f"{name}.txt": KITCHENS for name in "abcd"}
    assert all(ground.files()[name] == held for name, held in kept.items())


@pytest.mark.parametrize(
    ("deed", "tries", "says"),
    [
        ("endless", 2, "longer than"),
        ("killing", 2, "killed by signal 9"),
        ("greedy", 2, "memory"),
        ("stumbling", 1, "ZeroDivisionError: an egg too few"),
    ],
)
def test_a_recipe_that_does_harm_is_told_of_and_the_others_are_done(
    ground: Ground, deed: str, tries: int, says: str
) -> None:
    ground.rolls("before")
    ground.rolls("harm", says=f"mischief: {deed}")
    ground.rolls("then")
    limit_s = "8" if deed == "endless" else "100"
    code, told, aside = ground.run("--tries", "2", "--limit", limit_s, "--workers", "1")
    assert code == 1
    assert "1 could not be done" in told
    assert {row["recipe"] for row in ground.rows()} == {"before.txt", "then.txt"}, aside
    (fault,) = ground.errors()
    assert (fault["kind"], fault["recipe"], fault["tries"]) == ("recipe", "harm.txt", tries)
    assert says in fault["problem"]


def test_what_is_no_recipe_is_told_of(ground: Ground) -> None:
    ground.rolls("plain")
    (ground.recipes / "large.txt").write_bytes(b"1 cup flour\n" * 500_000)
    (ground.recipes / "empty.txt").write_bytes(b"")
    (ground.recipes / "picture.txt").write_bytes(b"\x89PNG\x00\x00")
    assert ground.run()[0] == 1
    problems = {fault["recipe"]: fault["problem"] for fault in ground.errors()}
    assert set(problems) == {"large.txt", "empty.txt", "picture.txt"}
    assert "5 MB" in problems["large.txt"]
    assert {row["recipe"] for row in ground.rows()} == {"plain.txt"}


def test_bad_kitchens_are_told_of_and_the_others_are_done(ground: Ground) -> None:
    ground.rolls("plain")
    with (ground.folder / "kitchens.csv").open("a") as table:
        table.write("Attic,up high,us\n")
    code, told, _ = ground.run()
    assert code == 1
    assert "1 could not be done" in told
    assert len(ground.rows()) == 3
    (fault,) = ground.errors()
    assert (fault["kind"], fault["kitchen"], fault["line"]) == ("kitchen", "Attic", 5)


def test_two_runs_do_not_write_into_one_folder(ground: Ground) -> None:
    ground.rolls("slow", says="mischief: slow")
    running = ground.start()
    begun(ground, running)
    code, _, aside = ground.run()
    assert code == 1
    assert "another run" in aside
    running.communicate(timeout=LONGEST_S)
    assert running.returncode == 0


def test_how_far_it_is_is_told_in_lines_outside_a_terminal(ground: Ground) -> None:
    ground.rolls("plain", "milk")
    _, told, aside = ground.run()
    assert "6 of 6 pairs" in aside
    assert "a second" in aside
    assert "\x1b" not in told + aside
