"""The explanations that come nearest to a why that none answers."""

from assistant.understanding.explanations import nearest


def test_nearest_goes_by_the_words() -> None:
    assert nearest("the brisket is stuck")[0] == "smoking_stalls"
    assert len(nearest("")) == len(nearest("x" * 10_000_000)) == 3
