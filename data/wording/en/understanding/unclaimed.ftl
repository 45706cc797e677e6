unknown-dish = I do not know { $name }; I treated it by the method alone.
unknown-place = I do not know how high { $name } is. What is the elevation there, in feet or metres?
