"""A conversation: what is remembered from one utterance to the next, and the rasa-sdk actions that go by it.

memory, moves and turn are plain functions: words and a Memory in, an Answer and a Memory out. actions are what rasa-sdk
runs, in this process (embedded) or over HTTP (server); domain is what Rasa is told about them. Importing this package,
memory, slots, keeper or record is cheap; turn brings the language with it, and rasa-sdk is imported by actions,
embedded, executor and server alone.
"""
