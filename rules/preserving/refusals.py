"""What is refused: ways of canning that have made people ill, and foods that nobody has tested."""

from __future__ import annotations

from dataclasses import dataclass

from rules.book import Part, rule
from rules.case import Case
from rules.model import Caution
from rules.preserving.vessel import food_of

BATHED = ("custard", "cheesecake")


@dataclass(frozen=True, slots=True)
class Refusal:
    """A practice that is refused. no: the answer and the caution; why: the reason; instead: what to do."""

    no: str
    why: str
    instead: str
    sources: tuple[str, ...] = ("usda-aib-539", "nchfp")


REFUSED = {
    "oven_canning": Refusal(
        "No. Do not process jars in an oven.",
        "Oven air heats jars slowly and unevenly, jars burst, and dry heat does not kill spores as steam does.",
        "Process in a boiling-water canner or a pressure canner, by a tested recipe.",
    ),
    "open_kettle": Refusal(
        "No. A jar that was only filled hot, turned over or sealed with wax is not canned.",
        "A lid that pops down proves a vacuum and not a kill; moulds and spores go in with the air.",
        "Process every jar for its tested time in boiling water or under pressure, or keep it refrigerated.",
    ),
    "electric_canner": Refusal(
        "No. Do not can in an electric pressure cooker or a small pressure saucepan, whatever its buttons say.",
        "Tested times count on the slow heating and cooling of a full-size canner and on a known temperature; at "
        "elevation electric cookers were measured to fall short of theirs.",
        "Use a stove-top pressure canner that holds at least four quart jars, with a gauge or weight, by a tested "
        "recipe.",
        ("usda-aib-539", "nchfp", "usu-ask-extension"),
    ),
    "untested_recipe": Refusal(
        "No. I give no process for a recipe that has not been tested.",
        "Acid, thickness and jar size decide how long the centre takes, and only a laboratory can tell. Elevation "
        "narrows the margin further.",
        "Use a current tested recipe as it stands, or freeze or refrigerate yours.",
    ),
    "thick_puree": Refusal(
        "No. Do not can pumpkin butter, mashed squash or any thick vegetable puree, not even under pressure.",
        "A thick puree lets heat in too slowly and differs from batch to batch, so no safe time could be set.",
        "Freeze the puree. Pumpkin and winter squash can be pressure-canned in cubes, by the tested recipe.",
        ("usda-aib-539", "nchfp", "kstate-pumpkin"),
    ),
    "garlic_in_oil": Refusal(
        "No. Do not can garlic, herbs or vegetables in oil, and do not keep them at room temperature.",
        "Oil shuts out air, garlic and herbs are low in acid, and botulism spores grow in the jar with no smell to "
        "warn you.",
        "Make it fresh, keep it refrigerated for four days at most, or freeze it.",
        ("nchfp", "from-memory"),
    ),
    "dairy_canning": Refusal(
        "No. Do not can milk, butter, cheese, eggs, flour, pasta or rice at home.",
        "Fat and starch shield spores and keep heat from the centre; no tested process exists for them.",
        "Can the rest of the dish by a tested recipe and add these when you serve it, or freeze it.",
    ),
    "cake_in_jar": Refusal(
        "No. Do not bake and seal bread or cake in jars to keep on a shelf.",
        "A moist crumb sealed off from air is low in acid, and an oven does not get its centre past the boil.",
        "Bake it, cool it and freeze it.",
    ),
    "microwave_canning": Refusal(
        "No. A microwave, dishwasher, slow cooker or water-bath circulator does not can food.",
        "They heat unevenly or stay under the boil, and no process has been tested for them.",
        "Use a boiling-water canner for acid food and a pressure canner for all else.",
    ),
    "reused_time": Refusal(
        "No. A tested process is not shortened, and its acid is not cut.",
        "Time, jar, acid and elevation were tested together; take one away and the margin is gone. Water here boils "
        "cooler, so the addition for elevation is part of the process.",
        "Give the full time for your elevation. If you do not want so much acid, freeze it instead, or balance it "
        "with sugar.",
    ),
    "botulism": Refusal(
        "Do not taste it: a jar with a bulging lid, a leak, a spurt or an off smell goes, unopened, out of reach.",
        "Botulism toxin can be there without any sign. Its spores live through boiling water at every elevation; it "
        "takes 240 °F (116 °C) under pressure, or acid, or cold.",
        "Bag it and throw it out of reach of people and animals, and wash everything it touched. Signs of illness "
        "after "
        "eating (blurred sight, drooping lids, slurred words): call emergency services at once.",
        ("usda-aib-539", "nchfp", "from-memory"),
    ),
    "unsealed_jar": Refusal(
        "Do not store a jar that did not seal: refrigerate it now and eat it within days.",
        "Air and germs get in where the lid is loose. A process that lost its boil or its pressure counts from "
        "nothing.",
        "Or process it again within 24 h, in a clean jar with a new lid, for the full time at your elevation. Pressure "
        "that fell under the mark while the clock ran: bring it back and start the time again.",
    ),
}


@rule("preserve.refused", "usda-aib-539", "nchfp")
def refused(case: Case) -> Part | None:
    """A practice that is refused at every elevation, why, and what to do instead."""
    found = REFUSED.get(case.request.subject or "")
    return _part(found) if found else None


@rule("preserve.untested", "usda-aib-539", "nchfp")
def untested(case: Case) -> Part | None:
    """A food that has no tested process."""
    food = food_of(case.request)
    if food.kind != "untested":
        return None
    baked = " A water bath in the oven is another thing: ask how long to bake it." if case.dish_class in BATHED else ""
    return _part(
        Refusal(
            f"No. There is no tested process for canning {case.food}.",
            "Too low in acid, too thick, too fat or too starchy for the heat to reach the centre in a time that "
            "anyone has tested. Elevation does not change that.",
            f"{food.instead[:1].upper()}{food.instead[1:]}.{baked}",
        )
    )


def _part(refusal: Refusal) -> Part:
    return Part(
        headline=refusal.no,
        because=refusal.why,
        steps=(refusal.instead,),
        cautions=(Caution("stop", refusal.no.removeprefix("No. "), refusal.sources),),
        sources=refusal.sources,
    )
