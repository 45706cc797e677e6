"""Times of day: schedules and clocks."""
