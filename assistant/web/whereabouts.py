"""Elevation without typing it: by the barometer, by the boil, or by where the device is."""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.reading import nearest_airport
from assistant.replies.sentences import worded
from assistant.understanding.awaited import in_reply
from assistant.understanding.elevation_told import elevation_told
from assistant.web.asked import NotTold
from rules.model import Kitchen
from rules.physics.air import HIGHEST_M, LOWEST_M
from rules.physics.ambient import ambient
from rules.said import elevation, number, sentences, temp, yes

say = sentences("web/whereabouts")
# a device that knows its height no better than this tells less than the nearest airport does [m]
WORST_M = 60.0


@dataclass(frozen=True, slots=True)
class Found:
    """Where somebody cooks from now on. words, said: how that stands in their conversation"""

    kitchen: Kitchen
    words: str
    said: str


def found(given: dict[str, str], before: Kitchen) -> Found:
    """The place that is told by a form. before: the kitchen until now, whose equipment and units stay

    raises: AssistantError or RulesError that says what is wrong
    """
    match given["way"]:
        case "barometer":
            return _by_barometer(f"{given['told']} {given['unit']}".strip(), before)
        case "boil":
            return _by_boil(f"{given['told']} {given['unit']}".strip(), before)
        case "device":
            return _by_device(given, before)
    heard = elevation_told(given["told"])
    return _found(before, heard.elevation_m or 0.0, given["told"], units=heard.units)


def told_of(kitchen: Kitchen) -> str:
    """That a kitchen is taken for granted from now on."""
    if kitchen.elevation_m is None:
        return worded(say("nowhere"), kitchen.units)
    air = ambient(kitchen.elevation_m, kitchen.pressure_pa)
    told = say(
        "here", named=yes(kitchen.name), name=kitchen.name, elevation=elevation(kitchen.elevation_m),
        boil=temp(air.boiling_c),
    )  # fmt: skip
    return worded(told, kitchen.units)


def _by_barometer(told: str, before: Kitchen) -> Found:
    heard = in_reply("elevation", f"my barometer reads {told}")
    if heard.pressure_pa is None or heard.elevation_m is None:
        doubt = next((worded(u.reason, heard.units) for u in heard.unused if u.reason), "")
        raise NotTold("elevation", doubt or f"{told!r} is not what a barometer reads; say 23.1 inHg or 782 hPa.")
    kitchen = replace(before, name="", elevation_m=heard.elevation_m, pressure_pa=heard.pressure_pa)
    return Found(kitchen, f"My barometer reads {told}", told_of(kitchen))


def _by_boil(told: str, before: Kitchen) -> Found:
    heard = in_reply("elevation", f"my water boils at {told}")
    if heard.elevation_m is None:
        doubt = next((worded(u.reason, heard.units) for u in heard.unused if u.reason), "")
        raise NotTold("elevation", doubt or f"{told!r} is no boil of water; say 199 F or 93 C.")
    return _found(before, heard.elevation_m, f"My water boils at {told}", units=before.units)


def _by_device(given: dict[str, str], before: Kitchen) -> Found:
    """By the altitude of the device where it is sure of it, else by the nearest airport, said to be assumed."""
    latitude, longitude = (_figure(given[name]) for name in ("latitude", "longitude"))
    altitude_m, within_m = (_figure(given[name]) for name in ("altitude", "accuracy"))
    sure = within_m is not None and within_m <= WORST_M
    if altitude_m is not None and sure and LOWEST_M <= altitude_m <= HIGHEST_M:
        kitchen = replace(before, name="", elevation_m=altitude_m, pressure_pa=None)
        told = say("by-device", here=told_of(kitchen), metres=number(within_m or 0.0, 0))
        return Found(kitchen, "Where I am, by this device", worded(told, kitchen.units))
    if latitude is None or longitude is None or not (abs(latitude) <= 90 and abs(longitude) <= 180):
        raise NotTold("elevation", "The device does not tell where it is; say the elevation or a town.")
    airport = nearest_airport.nearest(latitude, longitude)
    if airport is None:
        raise NotTold("elevation", "No airport is near enough to go by; say the elevation or a town.")
    kitchen = replace(before, name=f"near {airport.name}, assumed", elevation_m=airport.elevation_m, pressure_pa=None)
    told = say(
        "by-airport", here=told_of(replace(kitchen, name="")), airport=airport.name, km=number(airport.distance_km, 0)
    )
    return Found(kitchen, "Where I am, by this device", worded(told, kitchen.units))


def _found(before: Kitchen, elevation_m: float, words: str, *, units: str) -> Found:
    kitchen = replace(
        before, name="", elevation_m=elevation_m, pressure_pa=None, units="metric" if units == "metric" else "us"
    )
    return Found(kitchen, words, told_of(kitchen))


def _figure(text: str) -> float | None:
    try:
        found = float(text)
    except ValueError:
        return None
    return found if found == found and abs(found) < 1e6 else None
