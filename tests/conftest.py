"""What every test shares: no screen is needed, and a property is tried on the same examples each time."""

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from hypothesis import HealthCheck, settings

# A shared machine is slow now and then: no deadline by the clock. Same examples on each run: a failure stays a failure.
settings.register_profile(
    "shopdraw", deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow], print_blob=True
)
settings.load_profile("shopdraw")
