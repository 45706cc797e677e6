"""The drill as people meet it: replies read, questions and feedback worded, sheets, and the drill in a conversation.

The questions themselves are made and graded in rules.drill. Importing this package is cheap.
"""

from assistant.drill.sitting import Sitting, put, reply, start, understood
from assistant.drill.words import Wanted, wanted

__all__ = ["Sitting", "Wanted", "put", "reply", "start", "understood", "wanted"]
