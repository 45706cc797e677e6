"""What keeps without a canner, against the National Center for Home Food Preservation and the USDA guide."""

import pytest

from assistant.answering import reply_to
from rules.model import Request
from rules.preserving.room import needs


@pytest.mark.parametrize(
    ("text", "says"),
    [
        # NCHFP: okra is blanched 3 to 4 min; 1 min more from 5,000 ft, or half a minute for each 1,000 ft above 2,000
        ("can I freeze okra instead of canning it, 6,000 ft", "for 4 to 6 min at 6,000 ft"),
        ("may I store oats in glass jars", "needs no canning"),
        ("do I have to can honey", "needs no canning"),
        ("can I keep dried plums in a jar on the shelf", "dried right through"),
    ],
)
def test_what_keeps_it(text, says):
    answer = reply_to(text)
    assert says in answer.text
    assert not answer.text.startswith("No")


@pytest.mark.parametrize(
    "text",
    ["can I keep cooked oats in a jar on the shelf, 6,000 ft", "can I store fresh garlic in oil in a jar on the shelf"],
)
def test_what_is_wet_is_still_refused(text):
    assert reply_to(text).text.startswith("No")


def test_dry_food_is_asked_of_no_elevation():
    assert needs(Request(topic="preserve", subject="keeps_dry")) == ()


def test_stock_has_no_pickle():
    asked = reply_to("and pickled?", ["can I water bath chicken stock at 6,000 ft"])
    assert "no tested pickle" in asked.text
