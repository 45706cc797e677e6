"""The units that are kept are those that pint reads, to the last bit."""

import pytest

from assistant.reading.units import SI, registry, to_si, unit_book, unit_named

VALUES = (0.0, 1.0, 1 / 3, 0.1, 12.7, 350.0, 7000.0, 98765.4321)


def test_every_spelling_is_named_as_pint_names_it() -> None:
    pint = registry()
    named = {spelling: (pint.get_name(spelling), pint.get_symbol(pint.get_name(spelling))) for spelling in pint}
    assert {spelling: found[:2] for spelling, found in unit_book().named.items()} == named


@pytest.mark.parametrize("name", sorted(unit_book().factors))
def test_a_unit_is_as_large_as_pint_finds_it(name: str) -> None:
    kind = unit_named(name)[2]
    assert [to_si(value, name) for value in VALUES] == [
        float(registry().Quantity(value, name).to(SI[kind]).magnitude) for value in VALUES
    ]


def test_a_scale_of_temperature_has_no_factor() -> None:
    assert {"kelvin", "degree_celsius", "degree_fahrenheit"}.isdisjoint(unit_book().factors)
    assert to_si(273.15, "kelvin") == pytest.approx(0.0)
