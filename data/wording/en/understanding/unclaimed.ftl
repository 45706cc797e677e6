unknown-dish = I do not know { $name }; I treated it by the method alone.
unknown-place = I do not know how high { $name } is: what does your thermometer read in boiling water there, or what is the elevation?
unknown-elevation = What does your thermometer read in a pot of plain water at a full boil, or which town are you near?
