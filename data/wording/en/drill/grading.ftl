# $shown is the answer, $why the explanation, which of a yes or no begins with the word itself.
right = Right. { $why }
no-such = Not so. { $why }
explained = { $why }
passed-over = The answer: { $shown }. { $why }
wrong =
    Not so: { $shown }.{ $room ->
        [yes] { " " }What counts: { $tolerance }.
       *[no] { "" }
    } { $why }
