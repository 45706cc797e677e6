"""What is printed for a kitchen: the card on its wall, plots."""
