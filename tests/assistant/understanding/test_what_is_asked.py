"""What a question is about."""

import pytest

from assistant.answering import understand


@pytest.mark.parametrize(
    ("text", "subject"),
    [
        ("soft ball at 7,000 ft", "soft_ball"),
        ("what temperature is hard crack in Denver", "hard_crack"),
        ("baking powder for 2 tsp at 6500", "baking powder"),
        ("oven for muffins at 8000", "oven"),
        ("my dough doubles in 30 minutes", "proof"),
    ],
)
def test_is_heard(text: str, subject: str) -> None:
    assert understand(text).subject == subject


def test_a_why_question_finds_its_explanation() -> None:
    assert understand("why does water boil cooler at altitude").subject == "water_boils_cooler"
