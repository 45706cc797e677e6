line =
    { $side ->
        [above] { $beans_soften ->
                [no] Beans soften only very slowly in an open pot { $at }, because it boils below { $beans_need }:
                    use a pressure cooker.
               *[yes] Beans take { $pace_of_beans } { $at } because what holds them firm loosens very slowly in
                    cooler water.
            }
        [level] Beans that stay hard { $at } are old, or had hard water or acid in the pot; the boil itself is hot
            enough.
       *[below] The boil is hot enough { $at }, so beans that stay hard are old, or had hard water or acid.
    }
paragraph =
    A bean softens when the pectin between its cells lets go, and few things in the kitchen depend on heat so much:
    some { $beans_tenfold } cooler makes it ten times slower. { $boils } { $side ->
        [above] { $beans_soften ->
                [no] Under about { $beans_need } beans soften only very slowly, and an open pot there is below that.
               *[yes] That means { $pace_of_beans }, and under about { $beans_need } they soften only very slowly.
            }
        [level] That is hot enough; high up it is not.
       *[below] That is a little hotter than beans need.
    } Old beans, hard water and acid hold them firm at any height, so tomatoes and vinegar go in last. Soak them
    overnight in salted water. A pressure cooker is the real cure.
equations = { $boiling_equation } { $rate_of_beans }
belief-never-cook =
    { $side ->
        [above] { $beans_soften ->
                [no] Half true: in an open pot { $at } beans hardly soften, because it boils below { $beans_need }; under pressure
                    they do.
               *[yes] No: beans take { $pace_of_beans } { $at }, but they do soften in an open pot; only under a boil of about {
                    $beans_need } do they hardly soften at all.
            }
       *[other] No: the boil is hot enough { $at }; beans that stay hard are old, or had hard water or acid in the pot.
    }
