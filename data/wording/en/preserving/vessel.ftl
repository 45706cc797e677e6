that-food = that food
