line =
    Fill a big syringe a third with warm water, 120 °F (50 °C), no needle, cap the tip and pull: it boils in the hand, while
    an open pot boils at { $boil } { $at }.
paragraph =
    The plunger takes the air's push away, so steam can form in water that is only warm: less pressure, cooler boil. Let one
    student hold a thermometer in the cup and say the figure; wear glasses. Second trial, ten minutes: boil plain water,
    read { $boil }, and ask why it is not 100 °C (212 °F); turn the flame up, and it still reads the same. Third: cook a large egg
    from the fridge { $soft_egg_at_sea } and another { $soft_egg }, cut both open; the first is what the sea-level recipe gives {
    $at }. Show them, and cook on what is to be eaten till white and yolk are firm.
equations = { $boiling_equation }
