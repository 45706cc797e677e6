# $choice: what the question was taken for, of two that its words fit alike
taken = I took it that you ask { $choice }.
