why = { $way ->
    [up]
        More flour, about { $percent } %, gives the crumb more to stand on while its cells swell more. This is bakers'
        convention, not an extension table. A flour with more protein does the same work.
   *[down] The cells swell less at { $place }, so the structure needs { $percent } % less flour.
}
