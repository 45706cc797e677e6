"""How much of a dish: portions, what becomes of the raw weight, pieces, packs and pans, and the liquid it takes."""
