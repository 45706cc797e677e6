"""Subjects of food safety that are asked about, a module each."""
