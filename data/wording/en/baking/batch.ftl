note = { $note }.
same-everywhere = It is the same at every elevation in this kind of bake.
too-small-to-measure = The change is smaller than a cook can measure.
