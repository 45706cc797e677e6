line =
    At no height on land: on the highest mountain water still boils at about { $on_the_top } and starch swells from about
    { $starch_swells }, so what stops in practice is patience, and fuel.
paragraph =
    { $boils } Pasta, rice and an egg cook ever more slowly with each degree that is lost, but they do cook. Beans and roots are
    the first to give up: under about { $pectin_slow } what holds them firm hardly loosens, so above some 4,500 m (15,000 ft) whole
    dried beans stay hard in an open pot. There a pressure cooker is no luxury.
equations = { $boiling_equation }
