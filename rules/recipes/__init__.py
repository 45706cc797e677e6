"""Whole recipes, converted from one elevation to another."""
