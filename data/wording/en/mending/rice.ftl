# The sentences that tell a cook to make a change. They open a sentence, and can go on after a colon.
water = Give each cup of rice { $more } more water, soak it 20 to 30 min first, and keep it covered on low.
cooker = Soak the rice 20 to 30 min, give each cup { $more } more water, and run the cycle a second time.
