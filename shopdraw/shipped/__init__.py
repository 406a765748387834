"""Where tables, fonts, icons and samples lie; what is in them is others' knowledge.

In a checkout they stand at the top of the repository (`resources`, `sample_projects`). The wheel packs both inside the
package, so that nothing lands loose among other packages: `resources` as `shopdraw/_shipped/resources`,
`sample_projects` as `shopdraw/_shipped/sample_projects` (hatchling's force-include).
"""

from shopdraw.shipped.place import NotShipped, resource_path, sample_names, sample_path

__all__ = ["NotShipped", "resource_path", "sample_names", "sample_path"]
