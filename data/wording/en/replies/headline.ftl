# The one sentence that answers, where the rules do not word it themselves; and the question for what is missing.

# $time: a time with its range, the middle first
takes =
    { CAPITAL($time) } for { $doing } at { $place }{ $against ->
        [other] , against { $known } at { $baseline }
        [same] , as at { $baseline }
       *[nothing] { "" }
    }.
takes-times-as-long =
    No tested time is known for { $doing }; allow { $factor } the time it takes at { $baseline }.
takes-unknown = No tested time is known for { $doing }; the figures below hold at { $place }.

how-hot = For { $doing } at { $place }: { $what } { $temperature }.
how-hot-against =
    For { $doing } at { $place }: { $what } { $temperature }, against { $at_sea } at sea level.
how-hot-unknown = No temperature is known for { $doing }.

small-talk = { $kind ->
    [thanks] You are welcome.
    [goodbye] Goodbye, and good cooking.
    [who]
        I am simmerline, an assistant for cooks above sea level. Tell me a dish, a method and your elevation, and I will
        work it out.
    [trust]
        Every figure is worked out from physics or read from published tables, and each reply names its sources; the
        range says how sure it is. What is common practice or from memory is marked so. Check by thermometer and taste.
    [sigh] What went wrong? Tell me the dish, what you see, and your elevation.
    [hello] Hello. Tell me a dish, a method and your elevation, and I will work it out.
    [nod] Good. What is next?
    [insult] Fair enough. Tell me the dish and what came out wrong, and I will work on that.
    [injection] I keep to cooking at elevation, by the same rules for everybody. Which dish is it?
   *[other] I did not follow that. Say it another way, with the dish, the method or the elevation in it.
}
out-of-scope = That is outside what I know: I answer questions about cooking, baking and preserving at elevation.
# all that can be asked, a line each; the first is what is read aloud
help =
    Ask how long, how hot, why, how much or what went wrong, with a dish and your elevation: "how long to braise short
    ribs at 7,000 feet".
help-time = - Times and heat: how long, how hot, is it done, is it enough, which of two, in any pot, oven or cooker.
help-amount = - Amounts: how much to order, how much liquid, for how many, double it, for 60.
help-plan = - Plans: "dinner is at 6:30, when do I start", several dishes, "push it by 45 minutes".
help-timer = - Timers: "timer for that", "timers for all", "give the beans 15 more", "how long left", "stop".
help-bake = - Baking: what to change, and what went wrong; candy stages; paste a recipe to have it converted.
help-safe = - Safety and preserving: canning, holding, cooling, reheating, drinking water.
help-why = - Reasons: "why", and again for the next one down; "show the maths"; "shorter", "more detail".
help-talk = - Going on: "and for lamb", "at 9,000", "in Celsius", "the rice again", "undo", "start over".
help-kitchen = - Your kitchen: "my kitchen is at 7,000 ft", what water boils at there, your thermometer and barometer.
help-drill = - Training: "quiz me on baking".
not-covered = This is not covered yet: { $what }.
not-covered-kind = This is not covered yet: this kind of question.

missing = { $word ->
    [elevation] What elevation are you at? Feet, metres, a town, or what your water boils at will do.
    [dish] Which dish is it?
    [method] How do you want to cook { $food }: boiled, braised, steamed, roasted, or in a pressure cooker?
    [time] How long does it take at the elevation you know?
    [temperature] At what temperature?
    [portions] For how many portions?
    [service_time] When is it to be served?
    [recipe] Give me the recipe: paste it, or use simmerline convert with a file.
    [reading] What does the thermometer read in boiling water, or the barometer?
   *[symptom] What went wrong with it: did it sink, spread, stay hard, dry out?
}
choice = I am not sure what you want to know{ $dish ->
    [none] { "" }
   *[other] {" "}of { $dish }
}: { $one }, or { $other }?
