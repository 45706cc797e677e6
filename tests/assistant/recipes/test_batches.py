"""Changes as they are kept, read back, and a log without batches."""

from assistant.recipes.batches import as_kept, in_words, mending
from assistant.recipes.changes_heard import change_heard
from rules.mending import suggest

CAKE = suggest(["sank_in_the_middle"], dish_class="layer_cake", elevation_m=2133.6).causes


def test_changes_read_back_as_they_were_written() -> None:
    assert in_words(change_heard("oven 350F to 370F")) == "oven 350 °F to 370 °F"
    assert in_words(change_heard("less sugar")) == "sugar, less"
    assert in_words(change_heard("another pan")) == "another pan"
    for row in CAKE:
        assert in_words(as_kept(row.change, row.line))


def test_no_batches_nothing_to_mend() -> None:
    assert mending(()) is None
