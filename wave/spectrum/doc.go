// Package spectrum describes an irregular sea by its frequency spectrum: the variance of the surface, hertz by hertz.
package spectrum
