# style: the ids of lexicon/recipe_styles.toml
called = { $style ->
    [yeast_bread] yeast bread
    [quick_bread] a quick bread or muffin
    [griddle] something baked on a griddle or in a pan
    [layer_cake] a layer cake
    [foam_cake] a foam cake
    [pound_cake] a pound cake
    [biscuit] biscuits or scones
    [cookie] cookies
    [brownie] brownies
    [laminated] laminated dough
    [pizza] pizza
    [pie] a pie or tart
    [choux] choux or popovers
    [souffle] a soufflé
    [custard] a custard
    [cheesecake] a cheesecake
    [meringue] meringue
    [fried_dough] fried dough
    [sugarwork] sugar work
    [jam] jam
    [braise] a braise or stew
    [beans] beans
    [rice] rice
    [pasta] pasta
    [soup] a soup, stock or sauce
    [reduction] a reduction
    [cracker] crackers or flatbread without yeast
    [steamed_pudding] a steamed pudding
    [savoury_bake] a roast or a bake without a batter
    [deep_fried] something fried in deep fat
    [pressed] a dish from the pressure cooker
    [cold] something that is not cooked, or only cold
    [bake] a bake of no kind known here
   *[other] { $style }
}
