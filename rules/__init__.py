"""The rules engine: a Request goes in, an Answer with figures, steps, reasons, cautions and sources comes out."""
