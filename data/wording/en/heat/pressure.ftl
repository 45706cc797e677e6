caution =
    Never fill a pressure cooker past two thirds, half for beans, grains and anything that foams; keep the vent clear,
    let the pressure fall before opening, and follow the maker's instructions.

# $cooker is a label of data/lexicon/equipment.toml
your-cooker = your { $cooker }
stove-top-cooker = a stove-top pressure cooker
canning = For canning use the pressure in a tested table for your elevation, never one worked out from this.
