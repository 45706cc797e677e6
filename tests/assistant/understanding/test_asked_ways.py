"""Which way a cook asks whether it goes."""

import pytest

from assistant.understanding.asked_ways import asked_way
from assistant.understanding.pipeline import read


@pytest.mark.parametrize(
    ("text", "way"),
    [
        ("does it take longer up here", "longer"),
        ("will it cook slower", "longer"),
        ("does it need extra time", "longer"),
        ("should I add ten minutes of time", "longer"),
        ("do eggs cook faster at 9,000 ft", "shorter"),
        ("is it less time", "shorter"),
        ("does the oven need to be hotter", "hotter"),
        ("should I turn the fryer up", "hotter"),
        ("do I raise the oven", "hotter"),
        ("should the fat be cooler", "cooler"),
        ("does the fryer need turning down", "cooler"),
        ("does water boil at a lower temperature", "cooler"),
        ("is it the same time", "same"),
        ("does the oven stay where it is", "same"),
        ("is 165 still right", "same"),
        ("hotter or cooler", "either"),
        ("faster or slower", "either"),
        ("is 40 min too long", "either"),
        ("so I don't need longer", "either"),
        ("does anything change", "any"),
        ("does altitude affect it", "any"),
        ("do I have to adjust the time", "any"),
        ("does the soak change, yes or no", "any"),
        ("is it longer y/n", "longer"),
        ("do scones need more sugar", "more_of"),
        ("was I daft to add yeast", "more_of"),
        ("should a sponge have less flour", "less_of"),
        ("how long for pasta", None),
        ("braise short ribs at 7,000 ft", None),
        ("at higher elevation, what is the time", None),
    ],
)
def test_the_way(text, way):
    assert asked_way(read(text)) == way
