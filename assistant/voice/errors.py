"""What can go wrong with voice, each with what to do about it."""

from __future__ import annotations

from assistant.errors import AssistantError


class VoiceError(AssistantError):
    """Something that voice cannot do as asked."""


class BadSpeech(VoiceError, ValueError):
    """A recording that cannot be taken."""


class VoiceMissing(VoiceError, ImportError):
    """A part that voice needs and that is not installed; the message says how to get it."""
