# Jars judged by the time and the pressure that they had, or are to have. $own is the cook's own time.

# kind: no, yes, just where it goes by jar and pack, or unsaid where the cook told neither time nor pressure; fault: what fell short
printed =
    { $kind ->
        [yes] Yes: { $own } min is the full time
        [unsaid] Only if they had the full process
        [just] Only for some jars and packs is { $own } min enough
       *[no] No: { $fault ->
            [pressure] { $gauge } is too low
            [both] { $own } min at { $gauge } is too little
           *[time] { $own } min is too short
        }
    }. Due for { $food } at { $place }: { $each }{ $under ->
        [yes] , at { $at }
       *[no] , in boiling water
    }.
by-recipe =
    { $kind ->
        [yes] Yes: { $own } min is right for { $food } at { $place }, if your tested recipe prints that time for 0–1,000 ft.
       *[no]
            No: { $own } min is too short for { $food } at { $place }: a tested recipe that prints { $own } min for 0–1,000 ft takes
            { $due } min here.
    }
beyond = No: no printed table reaches { $place }, so no time in a canner there is known to be enough.
so = { $age ->
    [fresh] Redo them now, or refrigerate or freeze them.
    [old] Discard them.
   *[unknown] Within 24 hours redo, chill or freeze them; later discard them.
}

redo =
    Out of the canner less than 24 hours (Iowa State and Nebraska say 2): reheat the food, clean jars, new lids, and
    process again from zero for the full time, where a table prints one; or refrigerate and eat within days (jam within weeks), or freeze it.
later = Out longer than that: discard them, unopened and untasted, sealed or not, or ask your extension office first.
full-time = Give them the full time that is printed for your elevation, from a full boil or full pressure.
why =
    { $low ->
        [yes] Short of its heat, low-acid food can carry botulism with no sign.
       *[no] Water boils cooler up here, so the jars had less heat than was tested.
    }
lid-proves-nothing = A lid that went down shows that air left the jar, and not that the food had its heat.
