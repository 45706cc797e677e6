# row: a style and a component of tables/style_components.csv of which the style takes no share
stays = { $row ->
    [layer_cake-flour]
        The published cake tables leave the flour alone. If the crumb is still weak after the other changes, a
        tablespoon or two more is bakers' convention
    [layer_cake-fat] Only very rich cakes want less fat; try the other changes first
    [foam_cake-egg] The eggs stay; it is the whipping that changes, because the air beaten in swells more
    [pound_cake-flour] The published cake tables leave the flour alone
    [quick_bread-flour] Quick breads have flour enough; the published advice changes the leavening
    [quick_bread-egg] An extra-large egg for a large one does no harm where the crumb is dry
    [biscuit-sugar] There is too little sugar in a biscuit to weaken it
    [cookie-fat] Only cookies that spread too far want less fat; try the other changes first
    [cookie-egg] Cookies are often fine as written; an extra-large egg helps where the dough is crumbly
    [brownie-egg] The eggs stay; an extra-large one helps where the brownies crumble
    [yeast_bread-flour] Hold back a little flour and add it by feel: flour stored in dry air takes up more water
    [yeast_bread-salt] Salt is weighed against the flour, and the flour has not changed
    [yeast_bread-sugar] The yeast eats it and the crust browns by it; it does not weaken a dough as it does a cake
    [yeast_bread-oven] Most loaves bake at the recipe's setting; go up to 25 °F (14 °C) hotter if the crust stays pale
    [yeast_bread-time] Judge the loaf inside; the time hardly moves at the same setting
    [laminated-oven] The layers are lifted by steam, which needs no help here
    [laminated-time] The time hardly moves at the same setting
    [pizza-salt] Salt is weighed against the flour, and the flour has not changed
    [pizza-oven] A pizza oven is already as hot as it goes
    [pizza-time] The time hardly moves at the same setting
    [pie-oven] A crust has no leavening to outrun, so the setting stays
    [pie-time]
        The time stays; a juicy fruit filling may want a few minutes more, since it bubbles at a lower temperature
    [choux-time] The shells must dry through, so they keep their time; lower the oven if they brown too soon
    [souffle-sugar] There is too little sugar to matter
    [custard-oven] The bath sets the temperature, not the oven air
    [custard-sugar] A custard has no gas cells to weaken
    [cheesecake-sugar] A cheesecake has no gas cells to weaken
    [cheesecake-oven] A hotter oven cracks it
    [meringue-sugar] The sugar holds the foam together
    [meringue-oven] A meringue is dried, not baked, and dry thin air dries it no slower
    [cracker-oven] A thin, crisp dough has no crumb to set, so the setting stays; lower it a little if the edges brown too soon
    [cracker-time] They are done when they are dry and crisp
    [steamed_pudding-egg] The eggs stay; the basin is covered and loses no water
    [savoury_bake-oven] An oven's heat does not hang on air pressure, and nothing here has to rise
    [savoury_bake-time] An oven's heat does not hang on air pressure, and nothing here has to rise
    [meringue-time] It is done when it lifts off the paper
   *[other] { "" }
}
