"""The JSON of the desk under requests that its own description allows, and some that it does not: never a failure of ours."""

import warnings

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
