"""How a file of vectors is made: a seeded generator of rows, registered by the name of its file."""
import random
from math import log10

G = 9.80665
files = {}


def sweep(name):
    """A generator of rows (dictionaries of numbers), with its own seed so that the files do not hang together."""

    def register(function):
        files[name] = lambda: function(random.Random(name))
        return function

    return register


def short(value, digits=6):
    """An input with few digits, so that everyone starts from the same number."""
    return float(f"{value:.{digits}g}")


def spread(r, low, high, digits=6):
    """Evenly spread in the logarithm."""
    return short(10 ** r.uniform(log10(low), log10(high)), digits)
