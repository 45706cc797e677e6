"""What cooking methods share: wet and dry heat, pressure, the burner, equipment."""
