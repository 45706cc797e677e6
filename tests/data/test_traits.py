"""What foods are, by the lexicon, against what is known of them outside it."""

import pytest

from assistant.contributing.validate import trait_faults
from rules.foods.dishes import Dish, classes, dishes, in_row, traits_of
from rules.tables import read_toml

COMMON, RUNNER, TEPARY = "Phaseolus vulgaris", "Phaseolus coccineus", "Phaseolus acutifolius"

# Which dry bean each dish is made of. By the FDA's Bad Bug Book phytohaemagglutinin is the poison of Phaseolus beans,
# most in red kidney beans, a third of that in white ones, 5 to 10 % in broad beans. The species are from botany.
LECTIN = {
    "njahi": "Lablab purpureus: a lectin, and cyanide besides",
    "pinto beans": COMMON,
    "bolita beans": COMMON,
    "black beans": COMMON,
    "kidney beans": COMMON,
    "red beans": COMMON,
    "navy beans": COMMON,
    "great northern beans": COMMON,
    "white beans": COMMON,
    "cannellini beans": COMMON,
    "tarbais beans": COMMON,
    "coco beans": COMMON,
    "gigante beans": RUNNER,
    "corona beans": RUNNER,
    "judion beans": RUNNER,
    "gigantes plaki": RUNNER,
    "cranberry beans": COMMON,
    "flageolet beans": COMMON,
    "tepary beans": TEPARY,
    "anasazi beans": COMMON,
    "scarlet runner beans": RUNNER,
    "ayocote beans": RUNNER,
    "dried beans": "any bean, so the worst of them",
    "ranch beans": "pinto, " + COMMON,
    "githeri": "maize with kidney beans, " + COMMON,
    "baked beans": "navy, " + COMMON,
    "barbecue beans": "navy or pinto, " + COMMON,
    "cowboy beans": "pinto, " + COMMON,
    "refried beans": "pinto, " + COMMON,
    "feijoada": "black beans, " + COMMON,
    "fabada": "fabes, " + COMMON,
    "red beans and rice": "small red, " + COMMON,
    "rajma": "kidney, " + COMMON,
    "chili beans": "kidney or pinto, " + COMMON,
    "chuckwagon beans": "pinto, " + COMMON,
    "charro beans": "pinto, " + COMMON,
    "borracho beans": "pinto, " + COMMON,
    "kwati": "nine beans, kidney beans among them, " + COMMON,
    "maharagwe": "kidney, " + COMMON,
    "porotos": "any bean, so the worst of them",
    "feijao": "black or carioca, " + COMMON,
    "caraotas": "black, " + COMMON,
    "habichuelas guisadas": "red or pink, " + COMMON,
    "menestra": "canary or red, " + COMMON,
    "canary beans": COMMON,
    "kuru fasulye": "white, " + COMMON,
    "lobio": "kidney, " + COMMON,
    "pasulj": "white, " + COMMON,
    "prebranac": "white, " + COMMON,
    "tavče gravče": "white, " + COMMON,
}
NO_LECTIN = {
    "lima beans": "Phaseolus lunatus: its poison is cyanide",
    "butter beans": "Phaseolus lunatus: its poison is cyanide",
    "chickpeas": "Cicer arietinum",
    "crispy chickpeas": "Cicer arietinum",
    "chana masala": "Cicer arietinum",
    "kala chana": "Cicer arietinum",
    "hummus": "Cicer arietinum",
    "musabaha": "Cicer arietinum",
    "black-eyed peas": "Vigna unguiculata",
    "field peas": "Vigna unguiculata",
    "crowder peas": "Vigna unguiculata",
    "hoppin' john": "Vigna unguiculata",
    "pigeon peas": "Cajanus cajan",
    "adzuki beans": "Vigna angularis",
    "red bean paste": "Vigna angularis",
    "mung beans": "Vigna radiata",
    "soybeans": "Glycine max",
    "fava beans": "Vicia faba",
    "ful medames": "Vicia faba",
    "bissara": "Vicia faba",
    "lupini beans": "Lupinus: its poison is alkaloids, soaked out",
    "chole bhature": "Cicer arietinum",
    "ghugni": "dried white peas, Pisum sativum",
    "nohut": "Cicer arietinum",
    "matki usal": "Vigna aconitifolia",
    "bambara groundnuts": "Vigna subterranea",
}
# What cooks call them beside the names above: the trade's words in several languages, by species.
LECTIN_WORDS = """
borlotti; roman bean; haricot bean; pea bean; turtle bean; frijoles negros; feijao preto; cannellini; fagioli; teparies;
red kidney bean; rajma beans; great northern; pinto; frijoles; gigandes; judion; flageolet; ayocote; bean; heirloom bean
"""
NO_LECTIN_WORDS = """
garbanzo; ceci; kabuli chana; chole; cowpea; lobia; gandule; gungo pea; azuki; anko; moong bean; green gram; soya bean;
dried fava; habas secas; ful; lupini; tarwi
"""
# dishes of other classes that are made with dry Phaseolus beans
WITH_BEANS = """
cassoulet; gallo pinto; black bean soup; bean soup; white bean soup; navy bean soup; ham and bean soup; pasta e fagioli;
fasolada; minestrone; ribollita; soupe au pistou; bean stew; cholent; moros y cristianos; rice and peas; chili;
umngqusho; casamiento; red peas soup; carne en su jugo; enfrijoladas; lobiani;
dal makhani; ash reshteh; ghormeh sabzi; abgoosht; black bean burgers; chili mac; taco soup; locro; bean dip;
seven-layer dip
"""


def traits(dish: str) -> tuple[str, ...]:
    return dishes()[dish].traits


def listed(names: str) -> list[str]:
    return [name.strip() for name in names.replace("\n", " ").split(";")]


def beans() -> list[Dish]:
    return [dish for dish in dishes().values() if dish.dish_class == "dried_bean"]


@pytest.mark.parametrize("dish", beans(), ids=lambda dish: dish.name)
def test_every_bean_is_known_for_what_it_is(dish):
    assert (dish.name in LECTIN) != (dish.name in NO_LECTIN), "say in one of the tables what it is made of"
    assert ("lectin" in dish.traits) == (dish.name in LECTIN), LECTIN.get(dish.name) or NO_LECTIN.get(dish.name)


def test_a_bean_by_another_word():
    heard = {word: dish for dish in beans() for word in dish.heard_as}
    assert [word for word in listed(LECTIN_WORDS) if "lectin" not in heard[word].traits] == []
    assert [word for word in listed(NO_LECTIN_WORDS) if "lectin" in heard[word].traits] == []


def test_dishes_with_beans_in_them():
    beans = {dish.name for dish in dishes().values() if dish.dish_class != "dried_bean" and "lectin" in dish.traits}
    assert beans == set(listed(WITH_BEANS))


# Lentils, peas and fresh pods, by the same book, are none of it.
@pytest.mark.parametrize("dish", listed("lentils; dal; split peas; green beans; edamame; falafel; succotash; tofu"))
def test_other_pulses_and_fresh_pods(dish):
    assert "lectin" not in traits(dish)


# Substrings of names mislead: none of these is a bird.
@pytest.mark.parametrize(
    "dish",
    listed("chicken fried steak; mock duck; duck eggs; goose eggs; lebkuchen; brotchen; hamantaschen; duck fat; "
           "then thuk; flammkuchen; quail eggs; rabbit; frog legs; guinea pig"),
)  # fmt: skip
def test_no_bird(dish):
    assert "poultry" not in traits(dish)


@pytest.mark.parametrize(
    "dish",
    listed("karaage; coq au vin; doro wat; tandoori chicken; yakitori; squab; ostrich; turkey burgers; foie gras; "
           "gizzards; samgyetang; chicken kiev; pastilla; peking duck; oyakodon; buffalo chicken dip"),
)  # fmt: skip
def test_a_bird_under_any_name(dish):
    assert "poultry" in traits(dish)


@pytest.mark.parametrize(
    ("trait", "names"),
    [
        ("raw_egg", "hollandaise; bearnaise; chocolate mousse; tiramisu; eggnog; sabayon; carbonara; poached eggs"),
        ("raw_fish", "ceviche; aguachile; tiradito; sushi; gravlax; lox; caviar"),
        ("game", "venison steak; elk roast; wild boar; rabbit; pheasant; caribou"),
        ("trichinella", "wild boar; boar ragu"),
        ("ground", "hamburgers; bratwurst; kibbeh; cube steak; scotch eggs; shepherd's pie"),
        ("stuffed", "stuffed peppers; chicken cordon bleu; beef rouladen; stuffing; cannelloni"),
        ("pork", "carnitas; bacon; pork chops; char siu; bratwurst; tonkatsu"),
        ("shellfish", "oysters; squid; shrimp etouffee; crab cakes; paella"),
        ("fish", "salmon; cioppino; fish and chips; kedgeree; gefilte fish"),
        ("cooked_starch", "white rice; sushi; spaghetti; congee; couscous; arroz con pollo"),
        ("perishable", "quiche; cream puffs; garlic in oil; lasagna; baked potatoes; char siu bao; cheesecake bars"),
        ("shelf_stable", "bread; chocolate chip cookies; strawberry jam; beef jerky; apple pie; canned tomatoes"),
        ("cyanogenic", "cassava; bamboo shoots; lima beans; cassava leaves"),
        ("wild_foraged", "morels; chanterelles; porcini"),
        ("alcohol", "coq au vin; eggnog; rum cake; mulled wine"),
        ("jerky", "beef jerky; biltong"),
        ("dried", "beef jerky; dried apricots; kale chips; fruit leather"),
        ("gratin", "scalloped potatoes; potatoes anna"),
        ("stretched_curd", "mozzarella; burrata"),
        ("plain_boiled", "spaghetti; potatoes; pinto beans; carrots; white rice; red lentils; kale; prunes"),
        ("salted_water", "spaghetti; potatoes; gnocchi; kale; ramen"),
        ("own_liquid", "polenta; strawberry jam; tomato sauce; beef stew; chicken stock; custard; fudge; cream puffs"),
        ("boiled_down", "fudge; toffee; strawberry jam; marmalade; simple syrup; maple syrup"),
        ("uncovered", "chicken stock; bone broth; tomato sauce; lentil soup; strawberry jam"),
        ("keeps_liquid", "white rice; polenta; barley; lentil soup; beef stew"),
        (
            "starch_thickened",
            "gravy; white sauce; roux; espagnole; polenta; congee; tapioca pudding; lemon meringue pie",
        ),
        ("yeast_alone", "bread; brioche; challah; sourdough"),
        ("no_gluten", "gluten-free bread; gluten-free pizza dough"),
        ("no_pressure", "gravy; white sauce; custard; pudding; eggs"),
        ("seared_after", "steak; chicken breasts; salmon; bratwurst"),
        ("by_eye", "bacon; pancetta; lardons"),
        ("bowl_over_water", "hollandaise; custard; bearnaise"),
        ("maple_syrup", "maple syrup"),
        ("breast_milk", "breast milk"),
        ("any_bean", "dried beans"),
        ("perhaps_meat", "corn dogs; moussaka; lasagna; shepherd's pie; enchiladas; wiener schnitzel"),
        ("meat", "short ribs; rabbit; chicken livers; bacon; turkey; bratwurst; venison steak"),
        ("cured", "bacon; corned beef; pancetta; ham steak"),
        ("stalls", "beef brisket; pulled pork; turkey; pastrami"),
        ("spatters", "pork chops; salmon; chicken thighs; shrimp"),
        ("root", "potatoes; carrots; beets; sweet potatoes"),
        ("toasted", "almonds; popcorn; crispy chickpeas"),
        ("fried_briefly", "fried eggs; fried rice; bacon; spinach; french toast"),
        ("done_when_hot", "lasagna; bread; pizza; scrambled eggs; brownies"),
        ("in_liquid", "baked beans; white rice; beef stew; chicken stock"),
        ("water_bath", "creme brulee; flan; cheesecake"),
        ("superheats", "coffee; green tea; drinking water; milk; chicken noodle soup"),
        ("boils_over", "milk; oatmeal; spaghetti; white rice"),
        ("waits_hot", "short ribs; chili; split pea soup; baked beans; lasagna"),
        ("cold_made", "gravlax; lox; ceviche; tiradito; tiramisu; kimchi; herbs in oil; salted duck eggs"),
        ("in_oil", "garlic in oil; herbs in oil; infused oil"),
        ("sourdough", "sourdough; injera"),
        ("unyeasted", "gulab jamun; gujiya; funnel cake; cake doughnuts; churros; jalebi"),
    ],
)
def test_what_cooks_know_of_a_dish(trait, names):
    assert [name for name in listed(names) if trait not in traits(name)] == []


@pytest.mark.parametrize(
    ("trait", "names"),
    [
        ("perishable", "bread; honeycomb candy; beef jerky; ghee; apple pie; tortilla chips"),
        ("shelf_stable", "quiche; custard pie; garlic in oil; quesadillas; sausage rolls; tres leches cake"),
        ("gratin", "panna cotta; green bean casserole"),
        ("dried", "dried beans; raisins"),
        ("raw_egg", "hard-boiled eggs; custard; ice cream"),
        ("dairy", "soy milk; haupia; sorbet"),
        ("salted_water", "white rice; pinto beans; strawberry jam; beets"),
        ("boiled_down", "tomato sauce; chicken stock; beef stew; custard"),
        ("uncovered", "beef stew; pinto beans; white rice; short ribs"),
        ("starch_thickened", "tomato sauce; hollandaise; custard; chicken stock; key lime pie"),
        ("yeast_alone", "naan; biscuits; muffins; angel food cake"),
        ("no_gluten", "bread; pizza; brioche"),
        ("no_pressure", "tomato sauce; short ribs; polenta; white rice"),
        ("seared_after", "short ribs; eggs; carrots"),
        ("by_eye", "ham; corned beef; canadian bacon"),
        ("bowl_over_water", "poached eggs; salmon; chicken breasts"),
        ("maple_syrup", "birch syrup; simple syrup; maple sugar"),
        ("any_bean", "kidney beans; githeri; ranch beans"),
        ("perhaps_meat", "onion rings; candied yams; banana bread"),
        ("meat", "salmon; tofu; eggs; shrimp"),
        ("cured", "short ribs; fresh ham; pork belly; bratwurst"),
        ("stalls", "salmon; bratwurst; chicken thighs"),
        ("root", "kale; apples; green beans"),
        ("done_when_hot", "short ribs; potatoes; pinto beans"),
        ("superheats", "white rice; spaghetti; lasagna"),
        ("waits_hot", "white rice; salmon; steak; french fries"),
        ("cold_made", "pot roast; chicken stock; white rice; custard"),
        ("in_oil", "chili oil; kimchi; pickled onions"),
        ("sourdough", "baguettes; banana bread; brioche"),
        ("unyeasted", "doughnuts; berliners; luqaimat; beignets"),
    ],
)
def test_what_a_dish_is_not(trait, names):
    assert [name for name in listed(names) if trait in traits(name)] == []


def test_nothing_may_stand_out_and_may_not():
    both = [d.name for d in dishes().values() if {"perishable", "shelf_stable"} <= set(d.traits)]
    assert both == []


def test_every_trait_is_used_and_every_class_has_some():
    used = {trait for dish in dishes().values() for trait in dish.traits}
    assert used == {row["id"] for row in read_toml("lexicon/traits.toml")["trait"]}
    assert {c.id for c in classes().values() if not c.traits} == {"general"}


def test_a_dish_shares_the_traits_of_its_row_unless_it_has_its_own():
    row = {
        "name": "a",
        "class": "tender_cut",
        "methods": ["roast"],
        "traits": ["pork"],
        "cooks_like": ["b", {"name": "c", "traits": ["-whole_cut", "ground"]}],
    }
    of = classes()["tender_cut"].traits
    uncut = tuple(trait for trait in of if trait != "whole_cut")
    assert [dish.traits for dish in in_row(row)] == [(*of, "pork"), (*of, "pork"), (*uncut, "ground")]


def test_an_unknown_dish_has_its_class_traits():
    assert "lectin" in traits_of("some bean nobody listed", "dried_bean")
    assert traits_of("anything", "no such class") == ()
    assert traits_of(None, None) == ()


@pytest.mark.parametrize(
    ("of", "changes", "said"),
    [
        (("perishable",), ("poltry",), 'did you mean "poultry"'),
        (("perishable",), ("perishable",), "changes nothing"),
        ((), ("-perishable",), "changes nothing"),
        (("perishable",), ("shelf_stable",), "at once"),
    ],
)
def test_the_validator_names_the_fault(of, changes, said):
    assert [said in str(fault) for fault in trait_faults("f", "row", of, changes)] == [True]


def test_the_validator_passes_what_is_right():
    assert list(trait_faults("f", "row", ("perishable",), ("-perishable", "shelf_stable"))) == []
