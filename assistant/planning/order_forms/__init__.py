"""The forms an order is written in: a module here each, named as `--format` names it, that holds FORM.

A form is imported when it is asked for, so that an order pays for one form only; XLSX loads openpyxl.
"""

from __future__ import annotations

from functools import partial

from assistant.planning.forms import form_of
from rules.modules import module_names

names, form = partial(module_names, __name__), partial(form_of, __name__)
