no-timers = I cannot keep a timer: I run without memory just now. Set the one by the stove.
