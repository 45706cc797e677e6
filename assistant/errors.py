"""The root of everything the assistant raises on purpose; front ends map it to exit code, status and spoken line."""


class AssistantError(Exception):
    """Something the assistant cannot do as asked. The message says what was given and how to put it right."""


class Noted(UserWarning):
    """Something that a cook should know, and that stops nothing; a front end shows it once."""
