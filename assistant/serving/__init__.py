"""What both servers have in common for whoever runs them: counters, lines of the log, and a stop that loses nothing."""
