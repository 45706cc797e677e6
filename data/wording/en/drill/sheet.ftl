title = Cooking at elevation: set { $seed }, { $count } questions
key-title = Answer key: set { $seed }, { $count } questions
name = Name: ______________________________
for-the-teacher = For the teacher.
# what the trainee writes on
blank =
    { $form ->
        [figure] Answer: ____________________
        [choice] Answer: ____
        [yes_no] Yes ____  No ____
       *[order] Order: ____________________
    }
counts = What counts: { $tolerance }.
reason = { $why } Source: { $sources }.
