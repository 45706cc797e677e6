"""A formula weighed out: weights that sum to the dough."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.baking.dough import weighed

PARTS = st.lists(st.floats(0.1, 200.0), min_size=1, max_size=9)


def test_a_formula_of_200_percent() -> None:
    """10 kg of 100 + 75 + 23 + 2: half of it is flour."""
    assert weighed((100, 75, 23, 2), 10_000) == (5000, 3750, 1150, 100)


@given(PARTS, st.integers(2_000, 200_000))
def test_the_weights_sum_to_the_dough(parts: list[float], dough_g: int) -> None:
    assert sum(weighed(parts, dough_g)) == pytest.approx(dough_g, abs=1e-6)


@given(PARTS, st.integers(2_000, 200_000))
def test_no_weight_is_off_by_more_than_a_gram(parts: list[float], dough_g: int) -> None:
    exact = [part / sum(parts) * dough_g for part in parts]
    assert all(abs(a - b) <= 1 for a, b in zip(weighed(parts, dough_g), exact, strict=True))


@pytest.mark.parametrize(("parts", "dough_g"), [((), 1000), ((0.0,), 1000), ((100,), 0)])
def test_nothing_to_weigh(parts: tuple[float, ...], dough_g: float) -> None:
    with pytest.raises(ValueError, match="dough"):
        weighed(parts, dough_g)
