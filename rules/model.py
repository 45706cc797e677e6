"""What crosses between the assistant and the rules: a Request in, an Answer out. Nothing else does."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Literal

from rules.said import Words

Units = Literal["us", "metric"]
# what a rule says: rules.said.Words from the rules, text once assistant.replies has worded it
Sentence = Any
Level = Literal["stop", "warn", "note"]
ElevationFrom = Literal["stated", "place", "barometer", "boil_test", "kitchen", "assumed"]

MISSING_WORDS = (
    "elevation",
    "dish",
    "method",
    "time",
    "temperature",
    "portions",
    "service_time",
    "recipe",
    "reading",
    "symptom",
    "choice",
    "explanation",
)

# what a Request holds of the place
PLACE_SLOTS = ("elevation_m", "elevation_from", "elevations_m", "place", "pressure_pa")


def _help(text: str, default: Any = None) -> Any:
    """A dataclass field that carries its own explanation; the documentation and the JSON schema read it here."""
    return field(default=default, metadata={"help": text})


@dataclass(frozen=True, slots=True)
class Quantity:
    """An amount as the cook said it: 4 lb, 2 tsp."""

    value: float
    unit: str


@dataclass(frozen=True, slots=True)
class Amount:
    """How much of an ingredient the cook says is in it. role: of the ingredient, as in data/lexicon/ingredients.toml"""

    ingredient: str
    role: str
    value: float
    unit: str


@dataclass(frozen=True, slots=True)
class Tin:
    """Tins of one size. across_cm: how wide [cm]; along_cm: how long where they have corners, None for round ones"""

    count: int
    across_cm: float
    along_cm: float | None = None


@dataclass(frozen=True, slots=True)
class Unused:
    """Something that was heard and understood, but could not be used; the reply says so."""

    kind: str
    text: str
    reason: Words


@dataclass(frozen=True, slots=True, kw_only=True)
class Kitchen:
    """A place with an elevation and equipment; what a request takes for granted when the cook does not say."""

    name: str = _help("what the cook calls it", "")
    elevation_m: float | None = _help("elevation [m]; None where nobody has said")
    pressure_pa: float | None = _help("station pressure by the kitchen's own barometer [Pa]")
    units: Units = _help("which unit system is shown first", "us")
    equipment: tuple[str, ...] = _help("ids from data/lexicon/equipment.toml", ())
    barometer_offset_pa: float = _help("how much its barometer reads too high [Pa]", 0.0)
    thermometer_offset_c: float = _help("how much its thermometer reads too high [K]", 0.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Request:
    """One question, taken apart. Immutable; make a changed copy with dataclasses.replace."""

    text: str = _help("the words as they came", "")
    topic: str = _help("what kind of question it is, an id from data/lexicon/topics.toml", "time")
    subject: str | None = _help("what a why, symptom, stage or place question is about, as an id of that catalogue")
    symptoms_too: tuple[str, ...] = _help("what else went wrong, further ids of that catalogue", ())
    stages: tuple[str, ...] = _help("stages of boiled sugar, where two or more were named, in the order said", ())
    dish: str | None = _help("the dish, as the lexicon names it")
    dish_class: str | None = _help("the class the rules know the dish by")
    method: str | None = _help("the cooking method")
    elevation_m: float | None = _help("elevation of the kitchen [m]")
    elevation_from: ElevationFrom | None = _help("how the elevation came to be known")
    sets_kitchen: bool = _help(
        "whether the cook tells of the kitchen what holds from now on; a question never does", False
    )
    place: str = _help("the place whose elevation it is, where one was named", "")
    elevations_m: tuple[float, ...] = _help(
        "every elevation asked about, in the order said [m], where there are two or more; elevation_m is the first of "
        "them. Who answers for all of them leaves out of `unused` what has the kind `elevations`",
        (),
    )
    from_elevation_m: float | None = _help("elevation the baseline was written for [m]; sea level where not said")
    pressure_pa: float | None = _help("station pressure measured in the kitchen [Pa], when a barometer was read")
    time_min: float | None = _help("a time the cook gave [min], the lower end of a range")
    time_high_min: float | None = _help("upper end of that range [min]")
    temperature_c: float | None = _help("a temperature the cook gave [degC]")
    taken_c: float | None = _help("how hot the cook boiled a syrup, to be held against what the recipe wants [degC]")
    temperature_of: str | None = _help("what it is of, where the words tell: core, oven, hold, fridge, bath, smoker")
    quantity: Quantity | None = _help("an amount the cook gave")
    amounts: tuple[Amount, ...] = _help("what the cook says is in a dish that failed", ())
    struck: tuple[str, ...] = _help("causes of a fault that the cook has ruled out, rows of the table of causes", ())
    either: tuple[str, ...] = _help("changes between which the cook asks to choose, ids of fault_questions.toml", ())
    blames_place: bool = _help("whether it is asked if the elevation is behind a fault", False)
    tins: tuple[Tin, ...] = _help("tins by their size: the one of the recipe, then the one it is to go into", ())
    saving: bool = _help("whether the cook asks how to save what has failed", False)
    quantity_of: str | None = _help(
        "what that amount is of, where the words tell: cooked, each, portion; yield: what comes of it is asked"
    )
    own_yield: float | None = _help("what came of a weight in the cook's own kitchen, finished weight to raw weight")
    count: int | None = _help("how many pieces of the dish the cook has: 12 birds")
    portions: int | None = _help("number of people or covers")
    ingredient: str | None = _help("the ingredient of the dish whose amount is asked: flour for so many loaves")
    course: str | None = _help("how it is served: main, side, starter, buffet")
    liquid_per: float | None = _help("how much liquid the cook gives it, ml to ml of it dry")
    counted_in: tuple[str, ...] = _help("what an amount is asked in, ids of data/lexicon/containers.toml", ())
    dishes: tuple[str, ...] = _help("every dish that was named, in order, where there are several", ())
    menu: tuple[Request, ...] = _help(
        "the question of each dish that is to land with the others; place, service and covers are those of this one, "
        "and where one has `portions` of its own, so many take it",
        (),
    )
    share: float | None = _help("what share of the covers takes the dish, 0 to 1, where that was said of one of a menu")
    meatless: int | None = _help("how many of the covers eat no meat")
    cut: str | None = _help("how it is cut, or how big or in what state it is, an id of data/lexicon/cuts.toml")
    size: float | None = _help("how big it is cut, to its usual size: 0.5 for half")
    stuffed: bool = _help("whether it is filled with stuffing", False)
    precooked: bool = _help("whether it comes cooked, and is only heated through", False)
    core_c: float | None = _help("what its middle reads by now, where it is in the oven already [degC]")
    left_min: float | None = _help("how long it is to service by now [min]")
    rise_min: float | None = _help("how long a dough takes to double [min], where another time is wanted", None)
    rise_wanted_min: float | None = _help("how long it should take [min]", None)
    gauge_pa: float | None = _help("pressure cooker or canner gauge setting the cook gave [Pa]")
    service_time: str | None = _help("when the food is to be served, ISO 8601")
    service_day: str | None = _help("the day of that, as it was named: thursday, tomorrow, today")
    slack_min: float | None = _help("how long it is to be ready before service [min]")
    rest_min: float | None = _help("how long it is to rest before it is carved [min]")
    start_time: str | None = _help("when the cook starts, where that is said too, ISO 8601")
    ovens: int | None = _help("how many ovens, smokers or cookers there are for it")
    covered: bool | None = _help("whether the pot has its lid on")
    whistles: int | None = _help(
        "whistles of a pressure cooker that the cook counts where the baseline is; 0 where it is asked how many"
    )
    soaked: bool | None = _help("whether dry beans were soaked before")
    frozen: bool = _help("whether it goes in frozen", False)
    jars: tuple[Quantity, ...] = _help("canning jars that were named, each by what it holds", ())
    jarred: bool = _help("whether the jars were processed already", False)
    jarred_ago_min: float | None = _help("how long ago they came out of the canner [min], where that was told")
    packing: tuple[str, ...] = _help("how food is packed into them, ids of data/lexicon/packing.toml", ())
    ahead: bool = _help("whether it is cooked part of the way ahead, and finished at service", False)
    timer_action: str | None = _help(
        "what is to be done about timers: set, each, change, move, left, extend, stop, stop_all; fire: one that rings "
        "`left_min` before `service_time`, when a dish is begun; follow: those are moved with a plan that was changed"
    )
    timer_name: str = _help("what the cook calls the timer", "")
    small_talk: str | None = _help(
        "which smalltalk it is: trust, thanks, goodbye, who, hello, sigh, nod, insult, injection"
    )
    nearest: tuple[str, ...] = _help("explanations that sound most like a why that names none", ())
    forms: tuple[str, ...] = _help("forms of the question, ids of data/lexicon/forms.toml, the first counts most", ())
    elapsed_min: float | None = _help("how long it has been cooking already [min]")
    planned_min: float | None = _help("a time the cook has, or means to give it, to be judged [min]")
    asked_way: str | None = _help("which way it is asked whether it goes, an id of data/lexicon/asked_ways.toml")
    dishes_too: tuple[str, ...] = _help("other dishes that were named beside the dish, in the order said", ())
    methods_too: tuple[str, ...] = _help("other methods that were named beside the method, in the order said", ())
    temperatures_c: tuple[float, ...] = _help("every temperature, where two or more were given [degC]", ())
    wanted_doneness: str | None = _help("how done meat is wanted, an id of data/lexicon/doneness.toml")
    choices: tuple[str, ...] = _help("two topics that the words fit alike, to be asked which is meant", ())
    belief: str | None = _help("a belief about the explanation that was stated, the id of its row there")
    denied: bool = _help("whether that belief was said not to hold", False)
    claimant: str | None = _help("who is said to hold it, an id of claimants in data/lexicon/senses.toml")
    terms: tuple[str, ...] = _help("words of the trade whose meaning is asked, ids of data/lexicon/glossary.toml", ())
    recipe: str = _help("a recipe that was pasted, as it came", "")
    units: Units = _help("which unit system is shown first", "us")
    depth: int = _help("1 one line, 2 a paragraph, 3 the equations with numbers", 2)
    equipment: tuple[str, ...] = _help("ids of the kitchen's equipment", ())
    lacking: tuple[str, ...] = _help("methods and equipment that the cook says are not there", ())
    thermometer_offset_c: float = _help("how much the cook's thermometer reads too high [K]", 0.0)
    unused: tuple[Unused, ...] = _help("heard, understood, not usable", ())
    danger: str | None = _help("the danger that was heard, an id of data/lexicon/danger; it is answered first")
    pressed: str = _help("what is said for a thing that was refused before: luck, word, added, time, instead", "")
    allergens: tuple[str, ...] = _help("what guests are allergic to, ids of data/lexicon/allergens.toml", ())
    dangers_too: tuple[str, ...] = _help("further dangers that were heard, named after it or after the answer", ())


@dataclass(frozen=True, slots=True)
class Figure:
    """One number of an answer, in SI or kitchen-metric units, with its range and what it is at sea level.

    unit is one of degC, K, min, ml, l, g, kg, kPa, psi, m, percent, factor, count, tsp, or the unit the cook used.
    """

    id: str
    label: Sentence
    value: float
    unit: str
    low: float | None = None
    high: float | None = None
    sea_level: float | None = None


@dataclass(frozen=True, slots=True)
class Because:
    """Why: the sentence of the rule that was used, and where the rule comes from."""

    rule: str
    text: Sentence
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Caution:
    """A warning. stop: do not do it; warn: can hurt somebody or spoil the batch; note: good to know."""

    level: Level
    text: Sentence
    sources: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """Everything the rules have to say to one request. text and spoken are filled in by assistant.replies."""

    request: Request
    missing: tuple[str, ...] = _help("what must be asked first, most important first", ())
    figures: tuple[Figure, ...] = _help("the numbers", ())
    steps: tuple[Sentence, ...] = _help("what to do, in order", ())
    because: tuple[Because, ...] = _help("why, rule by rule: the trail of rules that were used", ())
    cautions: tuple[Caution, ...] = _help("what to watch for", ())
    headline: Sentence = _help("the answer in one sentence, where a rule words it itself", "")
    parts: tuple[Answer, ...] = _help("the answers to each of several questions asked at once", ())
    covered: bool = _help("False where no rule covers this question yet", True)
    text: str = _help("the reply as shown", "")
    spoken: str = _help("one or two sentences to be read aloud", "")

    def figure(self, figure_id: str) -> Figure | None:
        """The figure with this id, or None."""
        return next((f for f in self.figures if f.id == figure_id), None)
