"""Questions about jars as people put them, and what the first line of the answer must say."""

import re

import pytest

from assistant.answering import reply_to

# earlier utterances and the question, what the first line says, what it does not
ASKED = [
    # a tested process is never cut (NCHFP)
    ("can we knock 8 minutes off the processing of pears, 6,500 ft", "A tested process is not shortened", "poach"),
    ("how long does the processing of pears last at 6,500 ft, hot pack", "pints 35 min", "poach"),
    # boiling water
    ("processing time for raw pack peaches, quart jars, 5,200 ft", "40 min", "recipe for"),
    ("ok so nine quarts of peach halves packed cold we're at fifty five hundred feet how many minutes", "40 min", ""),
    ("hot packed pears in pints up at 6,700 feet, minutes in the canner?", "35 min", ""),
    ("I'm canning apricots at 7,400 ft, hot pack. How many minutes?", "pints 35 min, quarts 40 min", "raw"),
    ("bottling apricots in one litre clip-top jars at 1,650 m, hot pack, how long in the boiling water", "35 min", ""),
    ("how long do plums go in the water bath at 5,000 ft", "pints 30 min, quarts 35 min", ""),
    ("sweet cherries raw pack quarts 8500 ft boiling water canner", "45 min", ""),
    ("got a lug of cherries, want them in pints, raw pack. cabin sits at 8,200. time in the canner?", "45 min", "hot"),
    ("applesauce in quarts at 3,200 feet, process how long", "30 min", ""),
    ("APPLESAUCE PINTS 7,900 FT HOW MANY MINUTES IN THE CANNER", "25 min", ""),
    ("sliced apples, quart jars, Timberfold Lodge 7,000 ft: minutes in the canner?", "35 min", ""),
    ("how long to process apple juice in pints at 6,300 ft", "15 min", ""),
    ("grape juice quarts at 2,100 m water bath minutes", "15 min", ""),
    ("huckleberries raw pack pints 6100 ft how long in the canner", "25 min", ""),
    ("crushed tomatoes hot pack pints at 5,300 ft, minutes in boiling water?", "45 min", ""),
    ("whole tomatoes in water, quarts, 4,200 ft, boiling water bath time", "55 min", ""),
    ("halved tomatoes in their own juice with no liquid added, quarts, 7,000 ft, how long", "100 min", ""),
    ("tomatoes packed in tomato juice pints 6,500 ft how many minutes to can", "100 min", ""),
    (
        "tomatoes in quarts at 5,900 ft, water bath, how long",
        "crushed or whole or halved in water, quarts 55 min; .*95 min",
        "",
    ),
    ("tomato juice, pints, seven thousand feet, canning", "50 min", ""),
    ("tomato sauce pints 6,200 ft process time", "50 min", ""),
    ("salsa pints at 7,000 ft tested recipe, minutes in the bath", "25 min", ""),
    ("dill pickle spears in quarts, 6,400 ft, how long in the bath", "25 min", ""),
    ("bread & butter pickles 5k ft pints how long", "15 min", ""),
    ("pickled beets in pints 5,500 ft how many minutes", "40 min", ""),
    ("sauerkraut hot pack quarts 5,100 ft canning time", "20 min", ""),
    ("sauerkraut pints packed raw at 6,800 feet", "35 min", ""),
    ("raspberry jam half pints how long in the water bath at 7,100 ft", "15 min", "sets"),
    ("strawberry jam in 250 ml jars at 1,900 m, minutes?", "15 min.*half-pint", "sets"),
    ("strawberry jam, 8 oz jars, santa fe", "15 min", "sets"),
    ("grape jelly how long do the jars boil, 2,250 metres", "15 min", "sets"),
    ("apple butter pints 6,600 ft how long in boiling water", "15 min", "sets"),
    ("pear halves in 500 ml jars, hot pack, 1,750 m", "30 min.*pint", ""),
    ("12 oz jars of dill pickles at 7,000 ft, minutes", "20 min.*pint", ""),
    ("rhubarb pints 7000 ft how long do I can it", "25 min", ""),
    ("figs quarts 5,000 ft process", "60 min", ""),
    ("ketchup pints at 5,300 ft how long in the water bath", "20 min", ""),
    ("pickle relish half pints 6,900 ft minutes", "20 min", ""),
    ("My recipe for dilly beans says 5 minutes for pints. We live at 6,700 ft now.", "15 min", ""),
    ("putting up pears tonight, pints and quarts together in one load, 5,800 ft, hot pack", "30 min, quarts 35", ""),
    ("recipe says process 25 minutes for quarts of hot pack peaches, I'm at 6,800 ft", "40 min", ""),
    ("peaches at 9,400 ft quarts raw pack", "50 min", ""),
    ("can I put pears in the steam canner, hot pack quarts at 5,000 ft", "^Yes.*35 min in open steam", ""),
    ("chutney pints at 7,000 ft how long in the bath", "add 15 min", ""),
    # under pressure
    ("green beans in quarts, dial gauge, 5,700 ft: what pressure and how many minutes", "25 min at 13 psi", "15 psi"),
    ("pints of green beans, weighted gauge, 6,900 feet", "20 min at the 15 psi", "14 psi"),
    ("sweet corn cut off the cob in pints at 4,400 ft pressure canner", "55 min at 13 psi.*15 psi", ""),
    ("How many pounds on the dial for corn in pints at 5,900 ft and for how long", "55 min at 13 psi", "weight"),
    ("carrots quarts 7,100 ft pressure canner with a dial", "30 min at 14 psi", "weight"),
    ("My pressure canner's jiggler weight, 5280 ft, quarts of beets. Which weight", "35 min at the 15 psi", "dial"),
    (
        "trying to can potatoes in quarts, with a dial gauge, elevation 5,150. pounds and time pls",
        "40 min at 13 psi",
        "",
    ),
    ("peas pints at 5,000 ft canning how long and what psi", "40 min.*13 psi.*15 psi", ""),
    ("asparagus spears quarts 6,000 ft canner pressure and time", "40 min.*13 psi", ""),
    ("mushrooms half pints 7,000 ft pressure can", "45 min at 14 psi", ""),
    ("pinto beans, soaked, quarts, 5,280 ft, pressure canning time", "90 min at 13 psi", ""),
    ("canning elk stew meat, quarts, weighted gauge canner, 7,500 ft. how long and what weight?", "90 min.*15 psi", ""),
    ("what pressure for pint jars of venison at 6,800 feet on my dial gauge", "75 min at 14 psi", ""),
    ("ground beef pints 6,100 ft pressure canner", "75 min at 14 psi", ""),
    ("chicken thighs bone in, quarts, 4,900 ft dial gauge canner", "with bones for 75 min at 13 psi", ""),
    ("pressure canner: chicken breast chunks, no bones, pints, 5,600 feet", "boneless.*75 min at 13 psi", ""),
    ("trout in pints at 8,200 ft pressure canner", "100 min at 15 psi", ""),
    ("salmon in half pint jars at 7,000 ft pressure canner time", "100 min.*half-pint takes the time of a pint", ""),
    ("chicken stock quarts 5,300 ft canning how long and what weight", "25 min.*15 psi", ""),
    ("chili con carne in pints 6,000 ft canner time", "75 min.*13 psi", ""),
    ("vegetable soup quarts 7,000 ft pressure canner", "75 min at 14 psi", ""),
    # jars that are too big, canners that do not do, and what does instead
    ("chili con carne in quarts at 7,000 ft pressure canner", "^No. No process is printed", "min"),
    ("jam in quart jars at 7,000 ft", "^No. No process is printed", "min"),
    ("steam canner, whole tomatoes in water, quarts, 6,500 ft", "^No. Not in a steam canner", ""),
    ("gran always did her green beans three hours in the water bath, 6,000 ft, ok?", "^No. ", "min"),
    ("multicooker with a canning mode for pints of green beans at 7,000 ft, how long", "^No. ", "min"),
    ("peaches quarts at 10,800 ft, how long in the canner", "^No. ", "min"),
    # around jars
    ("what temp do I pull grape jelly at 7,000 ft", "207 °F", "min"),
    ("when is my apricot jelly ready, 5,700 ft", "Jelly sets at about 210 °F", "min"),
    ("how hot does marmalade get before it sets at 6,900 ft", "207 °F", "min"),
    ("wrinkle test for marmalade at 5,300 ft", "210 °F", "min"),
    ("jelly boiled to 220 at 6,500 ft came out rubbery, what went wrong", "12 °F.*too far.*208 °F", "powder"),
    ("my plum jam set like leather, I cooked it to 220F. We live at 7,000 ft. can it be saved?", "207 °F", ""),
    ("lemon in the tomato jars, still needed at 6,000 ft?", "^Yes: acid", ""),
    ("when does the clock start for green beans in the pressure canner at 5,300 ft", "^Count from.*13 psi", ""),
    ("headspace for peaches at 7,000 ft", "1/2 in", ""),
    ("the tiny jars of plum jam at 7,000 ft, same minutes as the half pints?", "takes no less", ""),
    ("how much salt for sauerkraut at 7,000 ft", "2 to 2.5 %", ""),
    ("how warm should the crock stand while the kraut ferments at 7,200 ft", "70 °F", ""),
    ("fridge pickles at 6,500 ft do I change anything", "^Nothing", ""),
    ("does my vinegar have to be 5 percent at 7,000 ft", "^Yes, 5 %", ""),
    ("can I leave the sugar out of canned peaches at 7,000 ft", "^Yes: fruit", ""),
    ("how long do I boil empty jars at 6,200 ft", "16 min", ""),
    ("why did half the syrup come out of my jars of pears at 7,000 ft", "siphoned", ""),
    ("a lid did not go down on one jar of peaches this morning", "refrigerate it now", ""),
    ("18 quarts of peaches, all of them popped but one, 6,000 ft", "refrigerate it now", "Well done"),
    (
        "we just put up 12 pints of pears and every lid popped down, so pleased",
        "^Well done.*within a year",
        "elevation are",
    ),
    ("how long will home canned peaches keep", "within a year", ""),
    ("venison jerky at 6,900 ft in the dehydrator, what temperature first", "160 °F", "fruit"),
    ("turkey jerky strips at 5,300 ft how hot before drying", "165 °F", "fruit"),
    ("drying apple rings at 7,000 ft, what temperature", "140 °F", "meat"),
    ("blanch green beans before freezing at 6,000 ft how long", "4 to 5 min", ""),
    ("I want to dry cure a ham at 7,000 ft", "I give no cure", ""),
]
FOLLOWED = [
    (("pears hot pack pints at 5,500 ft",), "and at 6,400?", "35 min"),
    (("peaches raw pack quarts at 5,500 ft, how long in the canner",), "what about my sister at 6,300", "45 min"),
    (("green beans pints 5,500 ft dial gauge",), "and in quarts?", "25 min at 13 psi"),
    (("apricots in pints at 7,000 ft how long do I process them",), "and raw pack?", "40 min"),
    (("plum jam half pints at 7,000 ft, minutes",), "and in the little 4 oz jars?", "15 min.*half-pint"),
    (("plum jam half pints at 7,000 ft, minutes",), "what temperature does it set at", "207 °F"),
    (("how long do I process pints of salsa at 5,000 ft",), "what about pickled beets", "40 min"),
    (("crushed tomatoes pints 7,000 ft",), "do I still add lemon?", "^Yes: acid"),
    (("peaches quarts at 7,000 ft canning",), "how much headspace", "1/2 in"),
]


def first_line(text, context=()):
    return reply_to(text, context).text.split("\n")[0]


@pytest.mark.parametrize(("text", "says", "never"), ASKED, ids=[text[:50] for text, _, _ in ASKED])
def test_the_first_line_answers(text, says, never):
    line = first_line(text)
    assert re.search(says, line), line
    assert not never or not re.search(never, line), line


@pytest.mark.parametrize(("context", "text", "says"), FOLLOWED, ids=[text[:50] for _, text, _ in FOLLOWED])
def test_the_first_line_answers_a_follow_up(context, text, says):
    line = first_line(text, context)
    assert re.search(says, line), line


LOW_ACID = ("green beans", "corn", "carrots", "beets", "chicken", "venison", "chili", "chicken stock", "trout", "peas")


@pytest.mark.parametrize("food", LOW_ACID)
@pytest.mark.parametrize("way", ["in a water bath", "in the steam canner", "in boiling water"])
def test_low_acid_food_never_gets_minutes_in_boiling_water(food, way):
    """Neither in the first line nor, without a pressure beside them, anywhere else."""
    text = reply_to(f"how long do I process pints of {food} {way} at 6,500 ft").text
    assert text.startswith(("No.", "Only if"))
    assert not re.search(r"\d+ min", text.split("\n")[0])
    for line in text.split("\n"):
        timed = re.search(r"(pints|quarts)[^.;]*\d+ min", line)
        assert not timed or "pressure canner" in line, line


@pytest.mark.parametrize(
    ("text", "opens"),
    [
        ("how long do I simmer a stew with canned tomatoes at 8,000 ft", "About "),
        ("soup using canned chickpeas at 2,600 m, how long on the stove", "About "),
        ("water bath jars of soup with canned chickpeas at 8,000 ft", "Process soup in a pressure canner, never"),
    ],
)
def test_what_comes_in_a_can_and_goes_into_a_pot_is_no_canning(text: str, opens: str) -> None:
    assert reply_to(text).text.startswith(opens)
