"""The one reader of kitchen English: numbers, units, times, temperatures, elevations, amounts."""
