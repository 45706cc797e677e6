# the explanations that may be meant, by their titles
one-reason = Do you mean { SMALL($title) }?
either-reason = Do you mean { SMALL($title) }, or { SMALL($other) }?
