"""Modules of libraries that the command imports but does not use: each is run when something of it is first wanted.

Importing spaCy brings its command line, and with that web clients and a project manager, for one function that nobody
here calls; importing rasa-sdk brings a web server, for plugins of a server of its own. Each module stays the real one,
at its place, under its name; only its code runs later, as with importlib's LazyLoader, which cannot do so for packages.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Mapping, Sequence
from importlib.abc import Loader, MetaPathFinder
from importlib.machinery import ModuleSpec, PathFinder
from types import ModuleType
from typing import Any

# module -> functions that are taken out of it where it is imported, and perhaps called later
UNUSED: dict[str, tuple[str, ...]] = {"spacy.cli": (), "spacy.cli.info": ("info",), "rasa_sdk.plugin": ()}


class Waiting(ModuleType):
    """A module that is run when a name of it is first asked for; those in underscores are asked for by the import."""

    def __getattribute__(self, name: str) -> Any:
        """The name once the module has run, or a function that has it run when it is called."""
        if name.startswith("__"):
            return super().__getattribute__(name)
        if name in self.__loader__.functions:  # type: ignore[union-attr]
            return _called_later(self.__name__, name)
        run(self.__name__)
        return getattr(sys.modules[self.__name__], name)


class WhenWanted(Loader):
    """Leaves a module waiting. loader: that which runs it; functions: those that may be taken before"""

    def __init__(self, loader: Loader, functions: Sequence[str]) -> None:
        self.loader, self.functions = loader, functions

    def create_module(self, spec: ModuleSpec) -> ModuleType | None:
        """The module as its own loader makes it."""
        return self.loader.create_module(spec)

    def exec_module(self, module: ModuleType) -> None:
        """Leave the module to be run later."""
        module.__class__ = Waiting


class Later(MetaPathFinder):
    """Finds the modules that are run later, and leaves all others to those that find them anyway."""

    def __init__(self, modules: Mapping[str, Sequence[str]]) -> None:
        self.modules = modules

    def find_spec(
        self, fullname: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        """The spec of a module that is run later; None for any other."""
        spec = PathFinder.find_spec(fullname, path, target) if fullname in self.modules else None
        if spec is None or spec.loader is None:
            return None
        spec.loader = WhenWanted(spec.loader, self.modules[fullname])
        return spec


def run_later(modules: Mapping[str, Sequence[str]]) -> None:
    """Have these modules run later, as far as they are not imported yet. For a process that is the command's own."""
    sys.meta_path.insert(0, Later(modules))


def waiting() -> list[str]:
    """The names of the modules that have been imported and have not run."""
    return [name for name, module in list(sys.modules.items()) if type(module) is Waiting]


def run(name: str) -> None:
    """Run a module with those that wait in the same package, what is inside of a package first."""
    outer = min((other for other in waiting() if f"{name}.".startswith(f"{other}.")), key=len)
    inside = (other for other in waiting() if f"{other}.".startswith(f"{outer}."))
    modules = [sys.modules[other] for other in sorted(inside, key=len, reverse=True)]
    for module in modules:
        module.__class__ = ModuleType
    for module in modules:
        module.__loader__.loader.exec_module(module)  # type: ignore[union-attr]


def _called_later(module: str, name: str) -> Callable[..., Any]:
    def call(*args: Any, **kwargs: Any) -> Any:
        if module in waiting():
            run(module)
        return getattr(sys.modules[module], name)(*args, **kwargs)

    return call
