# what is baked, where no dish was named
style =
    { $style ->
        [layer_cake] a cake
        [foam_cake] foam cake
        [pound_cake] pound cake
        [quick_bread] quick bread
        [biscuit] biscuit
        [cookie] cookie
        [brownie] brownie
        [yeast_bread] a yeast dough
        [laminated] laminated
        [pizza] pizza
        [pie] pie
        [choux] choux
        [souffle] souffle
        [custard] custard
        [cheesecake] cheesecake
        [meringue] meringue
        [fried_dough] fried dough
       *[other] other
    }
counted-from = That is the step from { $baseline }, for which the recipe is right already, not from sea level.
